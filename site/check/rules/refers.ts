import { basename, join } from 'node:path';
import type { Circuit } from '../../../calc/index.ts';
import type { ComponentRule } from '../../../components/schemas.ts';
import { filesUnder } from '../../read/folder.ts';
import { KINDS } from '../../read/kinds.ts';
import type { OpenDocument } from '../../read/open.ts';
import { didYouMean } from '../../suggest.ts';
import { type Content, type Rule, textAt } from '../rule.ts';

/** A property that names something names a thing that is there. What it names stands beside the component's schema. */
export const refers: Rule = {
  id: 'refers',
  *document(document, content) {
    for (const tag of document.parts.tags) {
      const rule = Object.hasOwn(content.components, tag.name) ? content.components[tag.name] : undefined;
      if (!rule) continue;
      const named = referencesOf(rule);
      for (const [name, what] of named) {
        const attribute = tag.attributes.find((one) => one.name === name);
        if (!attribute) continue;
        for (const value of [attribute.value].flat()) {
          if (typeof value !== 'string' || value === '') continue;
          const message = judge(content, document, what, value);
          if (message !== undefined)
            yield document.source.problem(attribute.valueOffset, `<${tag.name}>: "${name}" ${message}`);
        }
      }
      const asks = rule.circuit === 'always' || (rule.circuit === 'with of' && tag.props['of'] !== undefined);
      const said = named.some(([name, what]) => what in IN_CIRCUIT && tag.props[name] !== undefined);
      if (asks && !said && hasNoCircuit(document))
        yield document.source.problem(
          tag.offset,
          `<${tag.name}>: needs a circuit, but this ${oneOf(document)} has none`,
        );
    }
  },
};

const references = new WeakMap<ComponentRule, readonly [property: string, what: string][]>();
function referencesOf(rule: ComponentRule): readonly [property: string, what: string][] {
  let found = references.get(rule);
  if (!found) references.set(rule, (found = Object.entries(rule.refers ?? {})));
  return found;
}

const oneOf = ({ kind }: OpenDocument): string => KINDS[kind].one;

/** True only where the front matter was read and names no circuit; a broken one has its own message. */
const hasNoCircuit = ({ raw }: OpenDocument): boolean => raw !== undefined && textAt(raw, 'circuit') === undefined;

/** Drawings of the page line, one a file. */
const SYMBOLS = filesUnder(join(import.meta.dirname, '../../../components/symbols/svg')).map((file) =>
  basename(file, '.svg'),
);

type Known = (content: Content, circuit: Circuit) => readonly string[];
const partsOf = (circuit: Circuit, kinds?: readonly string[]): string[] =>
  Object.entries(circuit.parts).flatMap(([id, part]) => (!kinds || kinds.includes(part.kind) ? [id] : []));
const LOADS = ['lamp', 'load', 'strip', 'motor', 'buzzer', 'charger', 'heater', 'camera', 'socket'];

/** What is looked up in the guide's circuit. */
const IN_CIRCUIT: Record<string, { what: string; known: Known }> = {
  fuse: { what: 'fuse', known: (_, circuit) => partsOf(circuit, ['fuse', 'feed']) },
  wire: { what: 'wire', known: (_, circuit) => Object.keys(circuit.wires) },
  relay: { what: 'relay', known: (_, circuit) => partsOf(circuit, ['relay']) },
  load: { what: 'load', known: (_, circuit) => partsOf(circuit, LOADS) },
  strip: { what: 'strip', known: (_, circuit) => partsOf(circuit, ['strip']) },
  part: { what: 'part', known: (_, circuit) => partsOf(circuit) },
  partOrWire: { what: 'part or wire', known: (_, circuit) => [...partsOf(circuit), ...Object.keys(circuit.wires)] },
  input: { what: 'input', known: (_, circuit) => Object.keys(circuit.inputs) },
  jobValue: { what: 'job value', known: (_, circuit) => Object.keys(circuit.values) },
  value: { what: 'value', known: ({ valuePaths }, circuit) => valuePaths(circuit.id) },
};

/** What is looked up in the workshop. */
const IN_WORKSHOP: Record<string, { what: string; known: (content: Content) => Iterable<string> }> = {
  lesson: { what: 'lesson', known: ({ names }) => names.lessons },
  guide: { what: 'guide', known: ({ names }) => names.guides },
  surface: { what: 'surface', known: ({ names }) => names.surfaces },
  trait: { what: 'trait', known: ({ names }) => names.traits },
  vehicle: { what: 'vehicle type', known: ({ names }) => names.vehicles },
  relayForm: { what: 'relay form', known: ({ names }) => names.relays },
  circuit: { what: 'circuit', known: ({ names }) => names.circuits },
  calculator: { what: 'calculator', known: ({ calculators }) => calculators },
  image: { what: 'picture', known: ({ images }) => images.map((path) => `../images/${path}`) },
  symbol: { what: 'symbol', known: () => SYMBOLS },
  term: { what: 'term', known: ({ terms }) => terms.map(({ term }) => term) },
};

function judge(content: Content, document: OpenDocument, what: string, value: string): string | undefined {
  const place = IN_WORKSHOP[what];
  if (place) {
    const known = setOf(content, what, place.known);
    return known.has(what === 'term' ? value.toLowerCase() : value)
      ? undefined
      : `names no ${place.what} "${value}".${didYouMean(value, known)}`;
  }
  const asked = IN_CIRCUIT[what];
  if (!asked) return `refers to "${what}", which the check does not know`;
  const circuitId = textAt(document.raw, 'circuit');
  if (hasNoCircuit(document)) return `names ${asked.what} "${value}", but this ${oneOf(document)} has no circuit`;
  if (circuitId === undefined) return undefined;
  const circuit = content.circuits.get(circuitId);
  // A circuit that is missing or does not hold has its own message.
  if (!circuit) return undefined;
  const known = setOf(content, `${what} of ${circuitId}`, () => asked.known(content, circuit));
  if (known.has(value)) return undefined;
  return `names no ${asked.what} "${value}" of circuit "${circuitId}".${didYouMean(value, known)}`;
}

const sets = new WeakMap<Content, Map<string, ReadonlySet<string>>>();

/** Names of one kind as a set, made once a check. Terms are written in any case. */
function setOf(content: Content, what: string, known: (content: Content) => Iterable<string>): ReadonlySet<string> {
  let made = sets.get(content);
  if (!made) sets.set(content, (made = new Map()));
  let set = made.get(what);
  if (!set) {
    set = new Set(what === 'term' ? [...known(content)].map((term) => term.toLowerCase()) : known(content));
    made.set(what, set);
  }
  return set;
}
