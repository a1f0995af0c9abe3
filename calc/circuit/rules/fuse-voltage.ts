import { BLADE_VOLTAGE } from '../../tables/blade-fuses.ts';
import { exampleCircuit } from './example-circuit.ts';
import { type Example, type FailingExample, figure, type Rule } from './rule.ts';

/** The system never reaches more than a blade fuse can break. */
export const fuseVoltage: Rule = {
  id: 'fuse-voltage',
  severity: 'stop',
  title: 'Fuse not made for this voltage',
  why: 'The fuse cannot break the arc.',
  cure: 'Use fuses rated for this voltage.',
  source: 'ISO 8820-1:1994, scope: 32 V',
  check(look) {
    const { written } = look;
    if (written === undefined || written.highestV <= BLADE_VOLTAGE.ratedV) return [];
    return look.of('fuse').map((fuse) => ({
      parts: [fuse.id],
      message: `${look.Name(fuse.id)} is rated ${BLADE_VOLTAGE.ratedV} V and this vehicle reaches ${figure(written.highestV)} V.`,
    }));
  },
};

export const passes: Example[] = [{ title: 'a 12 V vehicle', circuit: exampleCircuit() }];

export const fails: FailingExample[] = [
  {
    title: 'a supply above 32 V',
    circuit: exampleCircuit({
      systemV: 24,
      supply: { restingV: 25.2, chargingV: 33, sourceOhm: 0.01 },
      parts: { L1: { kind: 'load', model: 'resistive', ratedV: 28, powerW: 20 } },
    }),
    messages: ['Fuse F1 is rated 32 V and this vehicle reaches 33 V.'],
  },
];
