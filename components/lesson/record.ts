import { type Card, createEmptyCard, fsrs, type Grade, Rating } from 'ts-fsrs';

/**
 * What one learner did with one lesson on this device: read, practised, answered, signed. Pure: every change gives a new
 * record. A question that was missed gets a card and comes back on another day; one that was right at once does not.
 */
export interface Asked {
  /** Options that were picked and checked, in order. */
  picked: readonly number[];
  /** When it was last answered right [ms]; absent while it is open. */
  rightAt?: number | undefined;
  /** Of a question that was missed: when it is asked again. */
  card?: Card | undefined;
}

export interface Signed {
  learner: string;
  trainer: string;
  /** Which piece: what, which vehicle or board. */
  piece: string;
  at: number;
  /** Why it was opened again after an earlier signature. */
  reopened?: string | undefined;
}

export interface LessonRecord {
  id: string;
  /** When the steps were read and done [ms]. */
  readAt?: number | undefined;
  /** Practice pieces made, three to make. */
  practice: readonly boolean[];
  questions: Readonly<Record<string, Asked>>;
  signed?: Signed | undefined;
  /** Signatures that were opened again, with the reason. */
  before: readonly Signed[];
}

export const PRACTICE_PIECES = 3;

export const emptyRecord = (id: string): LessonRecord => ({
  id,
  practice: Array.from({ length: PRACTICE_PIECES }, () => false),
  questions: {},
  before: [],
});

/** No learning steps within a day: what was missed is asked again another day, as the sign-off sheet wants it. */
const scheduler = fsrs({ enable_fuzz: false, enable_short_term: false });

const rated = (card: Card, at: Date, grade: Grade): Card => scheduler.next(card, at, grade).card;

/** Whether a missed question may be rated: once when it is missed, then each time it is due. */
const isDue = ({ card }: Asked, now: number): boolean => card !== undefined && card.due.getTime() <= now;

/** Whether a question wants an answer: never right yet, or due again since. */
export function isOpen(asked: Asked | undefined, now: number): boolean {
  if (asked?.rightAt === undefined) return true;
  return isDue(asked, now) && asked.rightAt < asked.card!.due.getTime();
}

/** The record after an option was checked. */
export function answered(
  record: LessonRecord,
  { question, option, right, now }: { question: string; option: number; right: boolean; now: number },
): LessonRecord {
  const before = record.questions[question] ?? { picked: [] };
  const at = new Date(now);
  const due = isDue(before, now);
  const first = before.card === undefined;
  let { card } = before;
  if (!right && (first || due)) card = rated(card ?? createEmptyCard(at), at, Rating.Again);
  if (right && due) card = rated(card!, at, Rating.Good);
  const asked: Asked = {
    picked: [...before.picked, option],
    rightAt: right ? now : due ? undefined : before.rightAt,
    card,
  };
  return { ...record, questions: { ...record.questions, [question]: asked } };
}

/** End of the day that `now` lies in, on the reader's clock [ms]. */
export function endOfDay(now: number): number {
  const day = new Date(now);
  day.setHours(23, 59, 59, 999);
  return day.getTime();
}

/** Questions that come back today, the longest overdue first. */
export function dueToday(
  records: readonly LessonRecord[],
  now: number,
): { lesson: string; question: string; due: number }[] {
  const until = endOfDay(now);
  return records
    .flatMap(({ id, questions }) =>
      Object.entries(questions).flatMap(([question, { card }]) =>
        card !== undefined && card.due.getTime() <= until ? [{ lesson: id, question, due: card.due.getTime() }] : [],
      ),
    )
    .sort((a, b) => a.due - b.due);
}

/** The four parts of a lesson, in order. */
export const PARTS = ['read', 'practised', 'checked', 'signed'] as const;
export type Part = (typeof PARTS)[number];

/** Which parts are done. Checked means that every question was right at least once. */
export function partsOf(record: LessonRecord | undefined, questions: readonly string[]): Record<Part, boolean> {
  return {
    read: record?.readAt !== undefined,
    practised: record !== undefined && record.practice.filter(Boolean).length >= PRACTICE_PIECES,
    checked: record !== undefined && questions.every((question) => record.questions[question]?.rightAt !== undefined),
    signed: record?.signed !== undefined,
  };
}

const day = (at: number): string =>
  new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' }).format(new Date(at));

/** Initials, for a short line: "Rosa Marten" is RM. */
export const initials = (name: string): string =>
  name
    .split(/\s+/)
    .filter((word) => word !== '')
    .map((word) => word.charAt(0).toUpperCase())
    .join('')
    .slice(0, 3);

/** A lesson as its short line: how much of it is inked in, and the words beside it. */
export function lineOf(record: LessonRecord | undefined, questions: readonly string[]) {
  const parts = partsOf(record, questions);
  const done = PARTS.filter((part) => parts[part]).length;
  const words =
    record?.signed !== undefined
      ? `${initials(record.signed.trainer)}, ${day(record.signed.at)}`
      : done === 0
        ? record !== undefined && Object.keys(record.questions).length > 0
          ? 'begun'
          : 'not started'
        : `${done} of ${PARTS.length} parts`;
  return { done, of: PARTS.length, words, signed: parts.signed };
}

/** The lesson to do next: the first that is not signed and whose lessons before it are; else the first not signed. */
export function nextLesson<L extends { id: string; after: readonly string[] }>(
  lessons: readonly L[],
  records: ReadonlyMap<string, LessonRecord>,
): L | undefined {
  const signed = (id: string): boolean => records.get(id)?.signed !== undefined;
  const open = lessons.filter(({ id }) => !signed(id));
  return open.find(({ after }) => after.every(signed)) ?? open[0];
}

/** What still stands between a piece and its signature; empty when it may be signed. */
export function missingFor(o: {
  accept: readonly boolean[];
  reject: readonly boolean[];
  learner: string;
  trainer: string;
  piece: string;
}): string[] {
  const open = o.accept.filter((met) => !met).length;
  const seen = o.reject.filter(Boolean).length;
  return [
    ...(seen > 0
      ? [`${seen === 1 ? 'A reject criterion was' : `${seen} reject criteria were`} seen: practise, try again`]
      : []),
    ...(open > 0 ? [`${open} ${open === 1 ? 'criterion' : 'criteria'} to accept`] : []),
    ...(o.piece.trim() === '' ? ['the piece'] : []),
    ...(o.learner.trim() === '' ? ['the learner'] : []),
    ...(o.trainer.trim() === '' ? ['the trainer'] : []),
    ...(o.trainer.trim() !== '' && o.trainer.trim().toLowerCase() === o.learner.trim().toLowerCase()
      ? ['a trainer who is not the learner']
      : []),
  ];
}
