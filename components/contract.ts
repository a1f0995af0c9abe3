import type { JobContext } from './context.ts';
import type { Kind } from './units.ts';

/**
 * The contract between a component's model and its markup.
 *
 * A component is three files: `props.ts` (what an author may write; read by the checker only), `model.ts` (props + job →
 * view; pure, runs at build time and in the browser) and `Name.astro` (the markup, written once, which shows the view).
 * The runtime never makes markup. When a job value changes it runs the model again and puts the view's fields where
 * these attributes say. The server has already rendered the same values there.
 *
 * | attribute | meaning |
 * |---|---|
 * | `data-component="Name"` `data-props='{…}'` | root of one component on the page |
 * | `data-out="field"` | the element's text |
 * | `data-state="field"` | `data-is` and a class of that name on the element: `<span class="flag pass" data-state="flag" data-is="pass">` |
 * | `data-show="field"` | hidden while the field is false or empty |
 * | `data-attr="x:needX width:barW"` | attributes; SVG geometry goes this way. Never `style`: the page's security policy forbids it |
 * | `data-each="rows"` | repeats: the first child is a `<template>` of one row, the server's rows follow; inside a row, fields are the row's |
 * | `data-unbound` | what stands in here is not this component's: the slot of a component that has a model |
 * | `data-in="feedRunM"` | an input bound to a job value |
 * | `data-local="currentA"` | an input that belongs to this component only (calculators); its rule comes from the module's `fields` |
 * | `data-stepper="feedRunM:1"` | a button that adds one step (`-1` takes one off) to the job value or local input |
 * | `data-set="surface:abs"` | a control that puts `abs` into this component's own input `surface` |
 * | `data-more="/surfaces/facts.json"` | on a root: props too large for the page, fetched when it comes to life |
 * | `data-reset="feedRunM"` | a button that puts the job value or local input back to its default |
 * | `data-error="feedRunM"` | where the message about that input goes; hidden while there is none |
 * | `data-open="feedRunM"` | opens the drawer of job values at that one |
 * | `data-choose="part:K1"` | a control that makes this the page's chosen `part`; pressed again it chooses nothing. On a select, its value is chosen: `data-choose="fault"` |
 * | `data-toggle="on:side"` | a control that puts `side` into, or takes it out of, the chosen list `on`; inside `data-steps` the lists before are kept, as steps |
 * | `data-clear="fault guess"` | a control that leaves these choices |
 * | `data-any="hidden"` | a control that chooses a fault that shows, by chance, and leaves every other choice but the state |
 *
 * A text inside an element of class `v` or with `data-mark` is marked for four seconds when it changes, old value struck.
 */

/** One thing a model says. A list of views is rendered by `data-each`. */
export type Field = string | number | boolean | readonly View[];
/** What a model returns: a flat record, nothing nested but lists of the same. Numbers in it are geometry or counts; a number to read is text, rounded for its use. */
export interface View {
  readonly [field: string]: Field;
}

/** Props as they stand in `data-props`. */
export type Props = Readonly<Record<string, unknown>>;

/** Props and job in, view out. Pure: same in, same out; no clock, no chance, no document. */
export type Model<P> = (props: P, job: JobContext) => View;

/** Rule of one input that belongs to a component. */
export interface LocalField {
  name: string;
  label: string;
  kind: Kind;
  default: number | string;
  /** Of a number. */
  min?: number | undefined;
  max?: number | undefined;
  step?: number | undefined;
  /** Of a choice: what may be chosen. */
  options?: readonly { value: string; label: string }[] | undefined;
  help?: string | undefined;
  /** Of a text of several rows: how many to show, and what is wrong with a text, if anything. */
  rows?: number | undefined;
  read?: ((text: string) => string | undefined) | undefined;
  /** A rule that ties it to the other inputs; false is a fault of this one. */
  check?: ((all: Readonly<Record<string, number | string>>) => boolean) | undefined;
  /** Shown beside the field when an entry is refused. */
  error: string;
}

/** What `models.ts` loads for a component: its model, and the rules of its own inputs if it has any. */
export interface ComponentModule {
  model: Model<never>;
  fields?: (props: never, job: JobContext) => readonly LocalField[];
}

/** States every part of a page shares: a shape, a word and a colour each (the look, "States"). */
export type State = 'pass' | 'note' | 'warn' | 'stop' | 'unk';

/**
 * What is said aloud when a component's answer changes: "Fuse F1: 7.5 A, was 5 A". A view that carries both fields is
 * announced; one that does not is silent, so that a page of forty numbers does not chatter.
 */
export interface Spoken {
  readonly spokenName: string;
  readonly spokenValue: string;
}

/** The words of a row, for markup whose attributes take nothing else; `false` is no word. Lists stay behind: `data-each` shows those. */
export function texts(row: View): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(row).flatMap(([key, field]) =>
      Array.isArray(field) ? [] : [[key, field === false ? '' : String(field)]],
    ),
  );
}
