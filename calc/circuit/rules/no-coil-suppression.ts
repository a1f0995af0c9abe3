import type { Element } from '../model.ts';
import type { Example, FailingExample, Look, Rule } from './rule.ts';
import { sketch } from './sketch.ts';

type Relay = Extract<Element, { kind: 'relay' }>;
type Switch = Extract<Element, { kind: 'switch' }>;

/** A clamp resistor above this multiple of the coil's lets the kick rise too far. */
const MOST_TIMES_COIL = 10;

/** C04: a coil on an electronic output has a diode or resistor straight across it. */
export const noCoilSuppression: Rule = {
  id: 'no-coil-suppression',
  neutralId: 'C04',
  severity: 'stop',
  title: 'Coil with no clamp on an electronic output',
  why: 'When the coil lets go it kicks with hundreds of volts; the kick kills the output.',
  cure: 'Fit a diode across the coil with its stripe at 86, or a relay with a clamp built in.',
  source: 'common practice, no source',
  check(look) {
    const outputs = look.of('switch').filter((each) => look.isOutput(each.input));
    return look.of('relay').flatMap((relay) => {
      if (outputs.length === 0 || isClamped(look, relay)) return [];
      const drivers = outputs.filter((output) => drives(look, output, relay));
      // Several contacts of one input are one output.
      const inputs = [...new Set(drivers.map((driver) => driver.input))];
      return inputs.map((input) => {
        const reversed = look.of('diode').find((diode) => diode.a === relay.coilP && diode.k === relay.coilN);
        const part = look.written ? look.ownerOf(drivers.find((each) => each.input === input)!.id) : input;
        return {
          parts: [relay.id, part],
          message:
            `The coil of ${look.name(relay.id)} hangs on ${look.inputName(input)} ` +
            (reversed
              ? `and diode ${reversed.id} across it is the wrong way round.`
              : 'with no diode or resistor straight across it.'),
        };
      });
    });
  },
};

/** A diode with its anode at 85, or a resistor small enough, on the very terminals of the coil. */
export function isClamped(look: Look, relay: Relay): boolean {
  return look.netlist.elements.some((each) => {
    if (each.kind === 'diode') return each.a === relay.coilN && each.k === relay.coilP;
    if (each.kind !== 'resistor' || each.joint) return false;
    const across =
      (each.a === relay.coilP && each.b === relay.coilN) || (each.a === relay.coilN && each.b === relay.coilP);
    return across && each.ohm <= MOST_TIMES_COIL * relay.coilOhm;
  });
}

/**
 * Whether a switch lies between a coil and its supply or its return: the coil reaches one side of it through wires,
 * contacts and series diodes, and its other side goes on to a source or to chassis.
 */
export function drives(look: Look, driver: Switch, relay: Relay): boolean {
  const rails = new Set([...look.of('source').map((source) => source.p), ...look.returns]);
  const open = (side: 'source' | 'load') => {
    const terminal = side === 'source' ? relay.coilP : relay.coilN;
    if (rails.has(terminal)) return false;
    const found = look.paths.search({
      starts: [{ node: terminal, start: relay.id }],
      through: (edge) => edge.element !== driver && edge.element.kind !== 'fuse' && look.isConductor(edge),
      ends: rails,
      by: 'ohm',
      towards: side,
    });
    const beyond = side === 'source' ? look.reached(driver) : look.returned(driver);
    return [
      [driver.a, driver.b],
      [driver.b, driver.a],
    ].some(([near, far]) => !rails.has(near!) && found.has(near!) && beyond.has(far!));
  };
  return open('source') || open('load');
}

export const passes: Example[] = [
  {
    title: 'diode with its anode at 85',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b k86 3
      relay k k86 k85 b k87 - 90
      diode dk k85 k86
      switch door_c k85 0 door
      input door door 0.3
      load lamp k87 0 13.5 6`),
  },
  {
    title: 'a plain switch drives the coil',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b k86 3
      relay k k86 k85 b k87 - 90
      switch dash k85 0 sw
      load lamp k87 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'nothing across the coil',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b k86 3
      relay k k86 k85 b k87 - 90
      switch door_c k85 0 door
      input door door 0.3
      load lamp k87 0 13.5 6`),
    messages: ['The coil of relay k hangs on output door with no diode or resistor straight across it.'],
  },
  {
    title: 'series diode, and a resistor that is too large',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b k86 3
      relay k k86 k85 b k87 - 90
      resistor r k86 k85 1000
      diode d k85 dt
      switch door_c dt 0 door
      input door door 0.3
      load lamp k87 0 13.5 6`),
    messages: ['The coil of relay k hangs on output door with no diode or resistor straight across it.'],
  },
];
