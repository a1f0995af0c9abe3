import { resolve } from 'node:path';
import mdx from '@astrojs/mdx';
import { defineConfig, passthroughImageService } from 'astro/config';
import { documents } from './site/vite/documents.ts';
import { preview } from './site/vite/preview.ts';

// The command line (site/command) sets these; `astro check` and editors run with the demonstration's defaults.
const {
  LOOMLEAF_CONTENT = './content',
  LOOMLEAF_OUT = './dist',
  LOOMLEAF_BASE = '/',
  LOOMLEAF_SITE = 'https://example.org',
  LOOMLEAF_CACHE,
} = process.env;

export default defineConfig({
  site: LOOMLEAF_SITE,
  base: LOOMLEAF_BASE,
  outDir: LOOMLEAF_OUT,
  // Each build brings its own: two builds at once must not write into each other's.
  ...(LOOMLEAF_CACHE && { cacheDir: LOOMLEAF_CACHE }),
  srcDir: './site',
  publicDir: './site/public',
  output: 'static',
  trailingSlash: 'always',
  devToolbar: { enabled: false },
  markdown: { syntaxHighlight: false }, // the highlighter writes style attributes, which the content security policy refuses
  image: { service: passthroughImageService() }, // pictures go out as the workshop made them; no native resizer to install
  integrations: [mdx()],
  // While one page is written the next is drawn.
  build: { inlineStylesheets: 'never', concurrency: 16 },
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
  vite: {
    plugins: [documents(resolve(LOOMLEAF_CONTENT)), preview(resolve(LOOMLEAF_CONTENT), LOOMLEAF_BASE)],
    // A content folder may lie anywhere; what its guides compile to still finds Astro here.
    resolve: { dedupe: ['astro'] },
    ...(LOOMLEAF_CACHE && { cacheDir: `${LOOMLEAF_CACHE}/vite` }),
    server: { fs: { allow: ['.', resolve(LOOMLEAF_CONTENT)] } },
  },
});
