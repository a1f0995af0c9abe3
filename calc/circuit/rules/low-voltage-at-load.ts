import { USUAL } from '../netlist.ts';
import { isLoad } from '../problems.ts';
import { exampleCircuit } from './example-circuit.ts';
import { type Draft, type Example, type FailingExample, figure, type Rule } from './rule.ts';

/** Every load gets its voltage, less the drop that it allows, engine off and engine on. */
export const lowVoltageAtLoad: Rule = {
  id: 'low-voltage-at-load',
  severity: 'warn',
  title: 'Too much voltage lost on the way',
  why: 'Dim lamps, chargers that never finish, heaters that lock out.',
  cure: 'Thicker wire, a shorter route, or better joints.',
  source: 'common practice, no source; 3 % of system voltage unless the load says otherwise',
  check(look) {
    const { written } = look;
    if (written === undefined) return [];
    const sources = look.of('source');
    return look.of('load').flatMap((load): Draft[] => {
      const part = written.circuit.parts[load.id];
      const own = part !== undefined && isLoad(part) ? part.dropFraction : undefined;
      const allowedV = (own ?? written.dropFraction ?? USUAL.dropFraction) * written.circuit.systemV;
      const worst = look.worst(
        (state, at) => {
          const ranged = look.context.wanted?.[at]?.rangeV?.[load.id];
          if (state.on[load.id] !== true || ranged !== undefined) return 0;
          const from =
            sources.length === 1 ? sources[0] : sources.find(({ id }) => id === look.ways.follow(state, load).source);
          if (from === undefined) return 0;
          return state.sourceV[from.id]! - Math.abs(Number(state.loadV[load.id]));
        },
        allowedV * (1 + 1e-9),
      );
      if (worst === undefined) return [];
      const percent = (volts: number) => `${figure((100 * volts) / written.circuit.systemV)} %`;
      return [
        {
          parts: [load.id],
          states: worst.states,
          message:
            `${look.Name(load.id)} loses ${figure(worst.value)} V (${percent(worst.value)}) on the way ` +
            `${look.stateWords(worst.state.inputs)}; ${figure(allowedV)} V (${percent(allowedV)}) is allowed.`,
        },
      ];
    });
  },
};

export const passes: Example[] = [{ title: 'short and thick', circuit: exampleCircuit() }];

export const fails: FailingExample[] = [
  {
    title: 'a long thin feed',
    circuit: exampleCircuit({ wires: { W3: { from: 'S1.2', to: 'L1.+', lengthM: 12, areaMm2: 1 } } }),
    messages: ['Load L1 loses 0.612 V (5.1 %) on the way with master switch on; 0.36 V (3 %) is allowed.'],
  },
];
