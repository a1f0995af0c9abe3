import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CALCULATOR_IDS } from '../../components/calculators/list.ts';
import { type JobContext, jobOf } from '../../components/context.ts';
import type { View } from '../../components/contract.ts';
import { galleryCases } from '../../components/gallery.ts';
import { loadModel, models } from '../../components/models.ts';
import { COMPONENT_NAMES, INNER_NAMES } from '../../components/names.ts';
import { schemas } from '../../components/schemas.ts';
import { surfaces } from '../calc/materials/surfaces.ts';

const ROOM = join(import.meta.dirname, '../../components');
const read = (file: string): string => readFileSync(join(ROOM, file), 'utf8');

/** A piece of markup with every piece it places, as text. */
function markupOf(file: string, seen = new Set<string>()): string {
  if (seen.has(file)) return '';
  seen.add(file);
  const text = read(file);
  const placed = [...text.matchAll(/from '(\.[^']*\.astro)'/g)].map(([, path]) => join(dirname(file), path!));
  return [text, ...placed.map((each) => markupOf(each, seen))].join('\n');
}

/** Fields that markup binds, by attribute and through `Num`. */
function boundIn(markup: string): Set<string> {
  const fields = new Set<string>();
  for (const [, field] of markup.matchAll(/data-(?:out|state|show|each)="([^"]+)"/g)) fields.add(field!);
  for (const [, pairs] of markup.matchAll(/data-attr="([^"]+)"/g)) {
    for (const pair of pairs!.split(' ')) fields.add(pair.slice(pair.lastIndexOf(':') + 1));
  }
  for (const [, name] of markup.matchAll(/<Num [^>]*name="([^"]+)"/g)) {
    for (const ending of ['', 'Unit', 'Spoken']) fields.add(name! + ending);
  }
  return fields;
}

/** Names of every field of a view and of its rows. */
function fieldsOf(view: View, into = new Set<string>()): Set<string> {
  for (const [name, field] of Object.entries(view)) {
    into.add(name);
    if (Array.isArray(field)) for (const row of field as View[]) fieldsOf(row, into);
  }
  return into;
}

/** Read by the runtime and by the page, not by markup. */
const FOR_THE_RUNTIME = new Set(['spokenName', 'spokenValue']);

const cases = galleryCases();
const free = jobOf(undefined);
const withJob = (component: string) =>
  cases
    .filter((each) => each.component === component && each.job !== undefined)
    .map(({ props, job }) => ({ props, job: job! }));
const cargo = cases.find(({ id }) => id === 'wire-default')!.job!;

/** Components of this contract: root name, markup, and states to look at. */
const SUBJECTS: [string, string, { props: unknown; job: JobContext }[]][] = [
  ['FuseSizer', 'fuse-sizer/FuseSizer.astro', withJob('FuseSizer')],
  ['GaugeChooser', 'gauge-chooser/GaugeChooser.astro', withJob('GaugeChooser')],
  ['Value', 'value/Value.astro', withJob('Value')],
  ['JobValue', 'job-values/JobValueRow.astro', withJob('JobValueRow')],
  ['Station', 'station/Station.astro', [{ props: { id: 'cable', title: 'Cable', wire: 'W2' }, job: cargo }]],
  ['PadHeat', 'lesson/PadHeat.astro', [{ props: {}, job: free }]],
  ['PadLay', 'lesson/PadLay.astro', [{ props: {}, job: { ...free, local: { stripMm: 6 } } }]],
  ['WettingDrop', 'lesson/WettingDrop.astro', [{ props: {}, job: free }]],
  ['PrepSelector', 'prep/PrepSelector.astro', [{ props: { facts: surfaces }, job: free }]],
  ...CALCULATOR_IDS.map((id): [string, string, { props: unknown; job: JobContext }[]] => [
    `Calculator/${id}`,
    'calculators/Calculator.astro',
    [
      { props: {}, job: free },
      ...cases.filter((each) => each.props['id'] === id).map(({ job }) => ({ props: {}, job: job! })),
    ],
  ]),
];

describe.each(SUBJECTS)('%s', (name, file, states) => {
  const markup = markupOf(file);
  const bound = boundIn(markup);

  it('shows only what its model says', async () => {
    const { model } = (await loadModel(name))!;
    const says = new Set<string>();
    for (const { props, job } of states)
      fieldsOf((model as (props: unknown, job: JobContext) => View)(props, job), says);
    // a calculator's page holds both instruments' bodies; only its own is rendered
    const others = name.startsWith('Calculator/')
      ? boundIn(markupOf('fuse-sizer/FuseBody.astro') + markupOf('gauge-chooser/GaugeBody.astro'))
      : new Set();
    const missing = [...bound].filter((field) => !says.has(field) && !others.has(field));
    expect(missing).toEqual([]);
  });

  it('says nothing that nothing shows', async () => {
    const { model } = (await loadModel(name))!;
    const says = new Set<string>();
    for (const { props, job } of states)
      fieldsOf((model as (props: unknown, job: JobContext) => View)(props, job), says);
    const unused = [...says].filter(
      (field) => !bound.has(field) && !FOR_THE_RUNTIME.has(field) && !new RegExp(`\\.${field}\\b`).test(markup),
    );
    expect(unused).toEqual([]);
  });
});

describe('the lists', () => {
  it('name the same components: markup, models, properties', () => {
    const placed = [...read('index.ts').matchAll(/^ {2}(\w+),$/gm)].map(([, name]) => name);
    expect(placed.sort()).toEqual([...COMPONENT_NAMES].sort());
    expect(Object.keys(schemas).sort()).toEqual([...COMPONENT_NAMES].sort());
    for (const name of Object.keys(models)) expect([...COMPONENT_NAMES, ...INNER_NAMES]).toContain(name);
  });

  it('give a model to every root in the markup', () => {
    const files = readdirSync(ROOM, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.astro'));
    const roots = files.flatMap((file) => [...read(file).matchAll(/data-component="(\w+)"/g)].map(([, root]) => root!));
    for (const root of roots) expect(Object.keys(models), root).toContain(root);
  });
});

describe('markup', () => {
  const files = readdirSync(ROOM, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.astro'))
    .map((file) => [relative('.', file), read(file)] as const);

  it.each(files)("%s keeps to the page's security policy and to one script", (_file, text) => {
    const [, body = text] = text.split(/^---$/m).slice(1);
    expect(body).not.toMatch(/\sstyle=/);
    expect(body).not.toMatch(/\son[a-z]+=/);
    expect(body).not.toMatch(/<(script|style)\b/);
  });

  it.each(files)('%s puts a template first in everything that repeats', (_file, text) => {
    const repeats = text.match(/data-each="/g)?.length ?? 0;
    const templated = text.match(/data-each="[^"]+"[^>]*>\s*(?:\{\w+ && )?<template(?:>| \/>)/g)?.length ?? 0;
    expect(templated).toBe(repeats);
  });

  it.each(files)('%s gives every entry a name, a keyboard for numbers and a place for its fault', (_file, text) => {
    for (const [tag] of text.matchAll(/<(?:input|select|textarea)\b[^>]*\bdata-(?:in|local|reading)=[^>]*>/g)) {
      expect(tag).toMatch(/\bid=|aria-label=/);
      if (tag.startsWith('<input') && !/type="(?:search|radio|checkbox)"/.test(tag))
        expect(tag).toMatch(/inputmode="decimal"/);
    }
  });
});
