/// <reference types="astro/client" />

declare namespace App {
  interface Locals {
    /** What the page being built knows; set by the page, read by components. */
    page?: import('../components/context.ts').PageContext;
  }
}

declare module 'virtual:loomleaf/documents' {
  type Load = () => Promise<import('astro/runtime/server/index.js').AstroComponentFactory>;
  export const guides: Record<string, Load>;
  export const lessons: Record<string, Load>;
}
