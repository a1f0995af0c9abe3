import { exampleCircuit } from './example-circuit.ts';
import { type Example, type FailingExample, figure, type Rule } from './rule.ts';

/** What a controller's output may carry is known before anything hangs on it. */
export const outputLimitUnknown: Rule = {
  id: 'output-limit-unknown',
  severity: 'stop',
  title: 'Limit of the output is not known',
  why: 'An unknown limit counts as none: the output shuts down, sets a fault or dies.',
  cure: "Look the limit up and write it as limitA of the input, or use a switch of the job's own.",
  source: 'common practice, no source',
  check(look) {
    if (look.written === undefined) return [];
    return look.of('switch').flatMap((contact) => {
      const input = look.netlist.inputs.find((each) => each.id === contact.input);
      if (input?.kind !== 'signal' || input.limitA !== undefined) return [];
      const worst = look.worstCurrent(contact.id, 1e-4);
      if (worst === undefined) return [];
      return [
        {
          parts: [look.ownerOf(contact.id)],
          states: worst.states,
          message:
            `${look.Name(contact.id)} carries ${figure(worst.value * 1000)} mA ${look.stateWords(worst.state.inputs)}, ` +
            `and nobody wrote what ${look.inputName(input.id)} may carry.`,
        },
      ];
    });
  },
};

export const passes: Example[] = [
  {
    title: 'a limit is written',
    circuit: exampleCircuit({ inputs: { master: { label: 'Courtesy output', kind: 'signal', limitA: 5 } } }),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'no limit is written',
    circuit: exampleCircuit({ inputs: { master: { label: 'Courtesy output', kind: 'signal' } } }),
    messages: [
      'Switch S1 carries 1975 mA with courtesy output on, and nobody wrote what output "Courtesy output" may carry.',
    ],
  },
];
