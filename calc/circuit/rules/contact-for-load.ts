import { contactNeeded } from '../../contact.ts';
import { CONTACT_SHARES, type LoadKind } from '../../tables/contacts.ts';
import type { LoadPart, Solution } from '../model.ts';
import { isLoad } from '../problems.ts';
import { currentOf } from '../report.ts';
import { exampleCircuit, WITH_RELAY } from './example-circuit.ts';
import { type Draft, type Example, type FailingExample, figure, type Look, list, type Rule } from './rule.ts';

/** Smallest of the shares of a contact that any kind of load may use. */
const LEAST_SHARE = Math.min(...CONTACT_SHARES.map((row) => row.share));

/** Every contact is rated for the kind of load that it switches, not only for its steady current. */
export const contactForLoad: Rule = {
  id: 'contact-for-load',
  severity: 'stop',
  title: 'Contact too small for this kind of load',
  why: 'Lamps and motors take a multiple of their current at first; the contacts weld and the load never switches off.',
  cure: 'Use a larger relay, or split the load over two.',
  source: 'common practice, no source; shares of a contact by kind of load',
  check(look) {
    if (look.written === undefined) return [];
    return ratedContacts(look).flatMap(({ id, maxA }): Draft[] => {
      // Even a filament needs no more than this multiple of its current.
      if (look.worstCurrent(id, maxA * LEAST_SHARE) === undefined) return [];
      const worst = look.worst((state) => needed(look, state, id), maxA * (1 + 1e-9));
      if (worst === undefined || Math.abs(worst.state.currentA[id] ?? 0) > maxA) return [];
      const kinds = [...new Set(behind(look, worst.state, id).map((load) => kindOf(load.part)))];
      return [
        {
          parts: [id],
          states: worst.states,
          message:
            `${look.Contact(id)} is rated ${figure(maxA)} A and needs ${figure(worst.value)} A for the ` +
            `${list(kinds)} load of ${figure(Math.abs(worst.state.currentA[id] ?? 0))} A ${look.stateWords(worst.state.inputs)}.`,
        },
      ];
    });
  },
};

/** Contacts with a rating: throws of relays and switches that the job fits. */
export function ratedContacts(look: Look): { id: string; maxA: number }[] {
  return look.netlist.elements
    .flatMap((element): { id: string; maxA: number | undefined }[] => {
      if (element.kind === 'switch') return [{ id: element.id, maxA: element.maxA }];
      if (element.kind !== 'relay') return [];
      return [
        { id: `${element.id}.no`, maxA: element.maxNoA },
        { id: `${element.id}.nc`, maxA: element.maxNcA },
      ];
    })
    .flatMap(({ id, maxA }) => (maxA === undefined ? [] : [{ id, maxA }]));
}

/** Loads whose current passes a contact in a state. */
export function behind(look: Look, state: Solution, contact: string): { part: LoadPart; currentA: number }[] {
  if (Math.abs(currentOf(state, contact) ?? 0) < 1e-6) return [];
  return look.of('load').flatMap((load) => {
    if (state.on[load.id] !== true) return [];
    const { elements } = look.ways.follow(state, load);
    const part = look.written?.circuit.parts[load.id];
    return part !== undefined && isLoad(part) && elements.includes(contact)
      ? [{ part, currentA: Math.abs(currentOf(state, load.id) ?? 0) }]
      : [];
  });
}

function needed(look: Look, state: Solution, contact: string): number {
  return behind(look, state, contact).reduce(
    (sum, { part, currentA }) =>
      sum + contactNeeded({ loadA: Math.min(currentA, 1000), loadKind: kindOf(part) }).contactA,
    0,
  );
}

/** How hard a load is on a contact. */
function kindOf(part: LoadPart): LoadKind {
  if (part.kind === 'motor') return 'motor';
  if (part.model === 'constant-power' || part.model === 'constant-current') return 'LED driver';
  return part.kind === 'lamp' ? 'filament' : 'resistive';
}

const motor = { kind: 'motor', model: 'resistive', ratedV: 12, currentA: 4 } as const;

export const passes: Example[] = [
  { title: 'a 4 A motor on a 30 A relay', circuit: exampleCircuit(WITH_RELAY, { parts: { L1: motor } }) },
];

export const fails: FailingExample[] = [
  {
    title: 'a 4 A motor on a 10 A relay',
    circuit: exampleCircuit(WITH_RELAY, {
      parts: {
        L1: motor,
        K1: { kind: 'relay', form: 'make', coilOhm: 90, maxA: { make: 10 }, suppression: 'diode' },
      },
    }),
    messages: [
      'Contact 87 of relay K1 is rated 10 A and needs 11.6 A for the motor load of 4.65 A with master switch on.',
    ],
  },
];
