import { type Draft, type Example, type FailingExample, figure, type Look, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** C10: no contact carries more than its rating. */
export const contactOverload: Rule = {
  id: 'contact-overload',
  neutralId: 'C10',
  severity: 'stop',
  title: 'Contact carries more than its rating',
  why: 'The contact welds and the load never switches off.',
  cure: 'Use a relay or switch with a larger contact rating, or split the load.',
  source: 'common practice, no source',
  check(look) {
    return look.netlist.elements.flatMap((element): Draft[] => {
      switch (element.kind) {
        case 'relay':
          return [
            ...over(look, `${element.id}.no`, element.maxNoA, look.contact(`${element.id}.no`)),
            ...over(look, `${element.id}.nc`, element.maxNcA, look.contact(`${element.id}.nc`)),
          ];
        case 'switch':
        case 'diode':
        case 'resistor':
          return over(look, element.id, element.maxA, look.name(element.id));
        default:
          return [];
      }
    });
  },
};

function over(look: Look, id: string, maxA: number | undefined, what: string): Draft[] {
  if (maxA === undefined) return [];
  const worst = look.worstCurrent(id, maxA * (1 + 1e-9));
  if (worst === undefined) return [];
  const draft = {
    parts: [id],
    states: worst.states,
    message:
      `${what.charAt(0).toUpperCase()}${what.slice(1)} carries ${figure(worst.value)} A ` +
      `${look.stateWords(worst.state.inputs)}; it is rated ${figure(maxA)} A.`,
  };
  if (look.element.get(id)?.kind !== 'diode') return [draft];
  return [
    {
      ...draft,
      why: 'The diode overheats and fails short; what it kept apart is joined again.',
      cure: 'Move the diode to the signal wire, use a larger one, or a relay.',
    },
  ];
}

export const passes: Example[] = [
  {
    title: 'a 30 A contact for 2.3 A',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b c sw max 1
      relay k c 0 b p - 90 max 30
      load lamp p 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'horns on a 10 A relay, their button in the load line',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b c sw
      relay k c 0 b p - 90 max 10
      switch button p h push max 1
      load horn h 0 13.5 1.3`),
    messages: [
      'Contact 87 of relay k carries 10.5 A with sw on and push on; it is rated 10 A.',
      'Switch button carries 10.5 A with sw on and push on; it is rated 1 A.',
    ],
  },
];
