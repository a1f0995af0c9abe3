/// <reference types="astro/client" />

declare namespace App {
  interface Locals {
    /** What the page being built knows; set by the page, read by components. */
    page?: import('../components/context.ts').PageContext;
  }
}
