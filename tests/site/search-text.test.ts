import { describe, expect, it } from 'vitest';
import { searchText } from '../../site/finish/search-text.ts';

const page = (body: string) =>
  `<html><head><title>A lamp &amp; a &lt;fuse> | Shop</title><style>p{}</style></head><body><p>not this</p><article data-pagefind-body>${body}</article><p>nor this</p></body></html>`;
const words = (body: string) =>
  searchText(page(body))
    ?.replace(/^.*<\/head>/, '')
    .replace(/<[^>]*>/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

describe('what the search reads of a page', () => {
  it('is nothing where the page does not ask to be found', () => {
    expect(searchText('<title>x</title><p>text</p>')).toBeUndefined();
  });

  it('keeps title, text, ids and what is meant for the search', () => {
    const text = searchText(
      page('<h2 id="fuse" class="a">Fuse</h2><span hidden data-pagefind-filter="vehicle:van"></span>'),
    );
    expect(text).toContain('<title>A lamp &amp; a &lt;fuse> | Shop</title>');
    expect(text).toContain('<h2 id="fuse">Fuse</h2>');
    expect(text).toContain('<span data-pagefind-filter="vehicle:van"></span>');
    expect(text).not.toContain('class=');
  });

  it('leaves out what is ignored, with all that stands inside it, and reads on behind', () => {
    const inside = '<div><p>no</p><br><svg viewBox="0 0 1 1"><path d="M0 0"/><text>no</text></svg></div>';
    expect(
      words(
        `<p>before</p><section class="inst" data-pagefind-ignore aria-label="a > b">${inside}</section><p>behind</p>`,
      ),
    ).toBe('before behind');
    expect(
      words(
        'yes<script>if (a < b) no()</script><template><p>no</p></template><button type="button">no</button> a <button type="button" class="term">term</button>',
      ),
    ).toBe('yes a term');
  });

  it('is not taken in by a mark that only begins alike, or stands in a value', () => {
    expect(words('<p data-pagefind-ignored>one</p><p title="data-pagefind-ignore">two</p>')).toBe('one two');
  });
});
