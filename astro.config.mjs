import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';

// The command line (site/command) sets these; `astro check` and editors run with the demonstration's defaults.
const { LOOMLEAF_BASE = '/', LOOMLEAF_OUT = './dist', LOOMLEAF_SITE = 'https://example.org' } = process.env;

export default defineConfig({
  site: LOOMLEAF_SITE,
  base: LOOMLEAF_BASE,
  outDir: LOOMLEAF_OUT,
  srcDir: './site',
  publicDir: './site/public',
  output: 'static',
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  markdown: { syntaxHighlight: false }, // the highlighter writes style attributes, which the content security policy refuses
  integrations: [mdx()],
  build: { inlineStylesheets: 'never' },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data:",
        "connect-src 'self'",
        "object-src 'none'",
        "base-uri 'self'",
      ],
      scriptDirective: { resources: ["'self'", "'wasm-unsafe-eval'"] }, // wasm: the search index
    },
  },
});
