import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jobOf } from '../../components/context.ts';
import type { View } from '../../components/contract.ts';
import { scramble, unscramble } from '../../components/lesson/answers.ts';
import * as padHeat from '../../components/lesson/pad-heat.ts';
import * as padLay from '../../components/lesson/pad-lay.ts';
import {
  answered,
  dueToday,
  emptyRecord,
  endOfDay,
  initials,
  isOpen,
  type LessonRecord,
  lineOf,
  missingFor,
  nextLesson,
  partsOf,
} from '../../components/lesson/record.ts';
import * as wettingDrop from '../../components/lesson/wetting-drop.ts';

const DAY = 24 * 3600_000;
const MONDAY = new Date('2026-03-02T09:00:00').getTime();
const pick = (record: LessonRecord, right: boolean, now: number, question = 'q1') =>
  answered(record, { question, option: right ? 1 : 0, right, now });

describe('answers in the page', () => {
  it('come back as they were, and cannot be read on the way', () => {
    const answer = { right: 2, why: ['Too slow.', 'Würgt — 3 °C', 'Copper carries.'] };
    const text = scramble(answer, 'q04');
    expect(unscramble(text, 'q04')).toEqual(answer);
    expect(text).toMatch(/^[A-Za-z0-9+/=]+$/);
    expect(atob(text)).not.toMatch(/right|why|Copper|slow/);
    expect(scramble(answer, 'q05')).not.toBe(text);
    expect(() => unscramble(text, 'q05')).toThrow();
  });

  it('hold for any words', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'grapheme' }), { minLength: 2, maxLength: 5 }), fc.string(), (why, id) => {
        expect(unscramble(scramble({ right: 0, why }, id), id)).toEqual({ right: 0, why });
      }),
    );
  });
});

describe('a question that was missed', () => {
  it('gets no card when it is right at once', () => {
    const record = pick(emptyRecord('l'), true, MONDAY);
    expect(record.questions['q1']).toEqual({ picked: [1], rightAt: MONDAY, card: undefined });
    expect(dueToday([record], MONDAY + 400 * DAY)).toEqual([]);
    expect(isOpen(record.questions['q1'], MONDAY + 400 * DAY)).toBe(false);
  });

  it('is asked again on another day, not the same one, and less often as it goes well', () => {
    let record = pick(emptyRecord('l'), false, MONDAY);
    expect(isOpen(record.questions['q1'], MONDAY)).toBe(true);
    record = pick(record, true, MONDAY + 60_000);
    expect(isOpen(record.questions['q1'], MONDAY + 3600_000)).toBe(false);
    expect(dueToday([record], MONDAY)).toEqual([]);
    const gaps: number[] = [];
    let now = MONDAY;
    for (let round = 0; round < 4; round++) {
      const due = record.questions['q1']!.card!.due.getTime();
      gaps.push(Math.round((due - now) / DAY));
      now = due + 3600_000;
      expect(isOpen(record.questions['q1'], now)).toBe(true);
      expect(dueToday([record], now)).toEqual([{ lesson: 'l', question: 'q1', due }]);
      record = pick(record, true, now);
      expect(isOpen(record.questions['q1'], now)).toBe(false);
    }
    expect(gaps[0]).toBeGreaterThanOrEqual(1);
    expect(gaps).toEqual([...gaps].sort((a, b) => a - b));
    expect(gaps.at(-1)).toBeGreaterThan(gaps[0]!);
  });

  it('is rated once a day however often one guesses, and reopens when missed again', () => {
    let record = pick(emptyRecord('l'), false, MONDAY);
    const first = record.questions['q1']!.card;
    record = pick(record, false, MONDAY + 1000);
    expect(record.questions['q1']!.card).toEqual(first);
    record = pick(record, true, MONDAY + 2000);
    const later = first!.due.getTime() + DAY;
    record = pick(record, false, later);
    expect(record.questions['q1']).toMatchObject({ picked: [0, 0, 1, 0], rightAt: undefined });
    expect(partsOf(record, ['q1']).checked).toBe(false);
    expect(record.questions['q1']!.card!.due.getTime()).toBeGreaterThan(later);
  });

  it('survives being copied to storage and back', () => {
    const record = structuredClone(pick(emptyRecord('l'), false, MONDAY));
    expect(pick(record, true, MONDAY + 9 * DAY).questions['q1']!.card!.due.getTime()).toBeGreaterThan(MONDAY + 9 * DAY);
    expect(endOfDay(MONDAY)).toBeGreaterThan(MONDAY);
  });
});

describe('the study path', () => {
  const signed = { learner: 'Asha P.', trainer: 'Rosa Marten', piece: 'board 3', at: MONDAY };
  const done = (id: string): LessonRecord => ({
    ...pick({ ...emptyRecord(id), readAt: MONDAY, practice: [true, true, true] }, true, MONDAY),
    signed,
  });

  it('says where a lesson stands, in a word and a length', () => {
    expect(lineOf(undefined, ['q1'])).toEqual({ done: 0, of: 4, words: 'not started', signed: false });
    expect(lineOf(pick(emptyRecord('l'), false, MONDAY), ['q1']).words).toBe('begun');
    expect(lineOf({ ...emptyRecord('l'), readAt: MONDAY, practice: [true, false, true] }, ['q1'])).toMatchObject({
      done: 1,
      words: '1 of 4 parts',
    });
    expect(lineOf(done('l'), ['q1'])).toEqual({ done: 4, of: 4, words: 'RM, 2 Mar', signed: true });
    expect(initials('  asha  de la Pena ')).toBe('ADL');
  });

  it('leads to the first lesson whose lessons before it are signed', () => {
    const lessons = [
      { id: 'a', after: [] },
      { id: 'b', after: ['c'] },
      { id: 'c', after: ['a'] },
    ];
    const next = (...ids: string[]) => nextLesson(lessons, new Map(ids.map((id) => [id, done(id)])))?.id;
    expect([next(), next('a'), next('a', 'c'), next('a', 'b', 'c')]).toEqual(['a', 'c', 'b', undefined]);
    expect(nextLesson([{ id: 'x', after: ['gone'] }], new Map())?.id).toBe('x');
  });

  it('lets nobody sign while anything is missing', () => {
    const all = { accept: [true, true], reject: [false], learner: 'A', trainer: 'B', piece: 'board' };
    expect(missingFor(all)).toEqual([]);
    expect(missingFor({ ...all, accept: [true, false] })).toEqual(['1 criterion to accept']);
    expect(missingFor({ ...all, reject: [true] })).toEqual(['A reject criterion was seen: practise, try again']);
    expect(missingFor({ ...all, trainer: ' a ' })).toEqual(['a trainer who is not the learner']);
    expect(missingFor({ accept: [false, false], reject: [], learner: '', trainer: '', piece: ' ' })).toEqual([
      '2 criteria to accept',
      'the piece',
      'the learner',
      'the trainer',
    ]);
  });
});

const free = jobOf(undefined);
const parts = { wettingDrop, padHeat, padLay };

function leaves(view: View): (string | number | boolean)[] {
  return Object.values(view).flatMap((field) =>
    Array.isArray(field) ? (field as View[]).flatMap(leaves) : [field as string | number | boolean],
  );
}

describe.each(Object.entries(parts))('%s', (_name, { fields, model }) => {
  it('says words and numbers and nothing else, for any entry', () => {
    const local = fc.record(
      Object.fromEntries(
        fields().map((field) => [
          field.name,
          field.options === undefined
            ? fc.double({ min: field.min!, max: field.max!, noNaN: true })
            : fc.constantFrom(...field.options.map(({ value }) => value)),
        ]),
      ) as Record<string, fc.Arbitrary<number | string>>,
    );
    fc.assert(
      fc.property(local, (entries) => {
        const view = model({}, { ...free, local: entries });
        for (const leaf of leaves(view as unknown as View))
          expect(String(leaf)).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
        expect(view.spokenValue).toMatch(/\S/);
      }),
      { numRuns: 300 },
    );
  });
});

describe('what the parts teach', () => {
  const at = <T>(model: (props: unknown, job: typeof free) => T, local: Record<string, number | string>): T =>
    model({}, { ...free, local });

  it('a drop stands lower the more energy the surface has, and never says strength', () => {
    const angles = [15, 30, 45, 70].map((energy) => Number(at(wettingDrop.model, { energy }).angle));
    expect(angles).toEqual([...angles].sort((a, b) => b - a));
    expect(at(wettingDrop.model, { energy: 20 })).toMatchObject({ flag: 'warn', flagText: 'It beads' });
    expect(at(wettingDrop.model, { energy: 45, polarPercent: 30, liquid: 'ethanol' })).toMatchObject({
      angle: '0',
      flagText: 'It spreads',
      edge: '',
    });
    expect(JSON.stringify(at(wettingDrop.model, {}))).not.toMatch(/strength|J\/m² of adhesion/i);
  });

  it('draws every drop on its foot and inside the picture', () => {
    for (let angle = 0; angle <= 180; angle += 5) {
      const { drop } = wettingDrop.dropOf(angle);
      const [x = 0, y] = drop.slice(1).split(/[ A]/).map(Number);
      expect(y === 104 || drop.includes(' 104v')).toBe(true);
      expect(x).toBeGreaterThanOrEqual(9);
    }
  });

  it('a clean tip of the right size beats a hotter black one', () => {
    expect(at(padHeat.model, {})).toMatchObject({ flag: 'pass', flagText: 'Flows and holds', flows: '1.01 s' });
    expect(at(padHeat.model, { tipC: 450, face: 'black with oxide' })).toMatchObject({
      flag: 'warn',
      flagText: 'Cold joint',
    });
    expect(at(padHeat.model, { tipC: 450, timeS: 5 })).toMatchObject({ flag: 'stop', flagText: 'Pad lifts' });
  });

  it('three millimetres cover the pad; five short it', () => {
    expect(at(padLay.model, {})).toMatchObject({ flag: 'pass', onPad: '3', beyond: '0\u00a0mm', past: '' });
    const long = at(padLay.model, { stripMm: 5 });
    expect(long).toMatchObject({ flag: 'stop', beyond: '2\u00a0mm' });
    expect(long.reasons.length).toBe(2);
    expect(at(padLay.model, { offsetMm: 2 }).clear).toBe('touches');
  });
});
