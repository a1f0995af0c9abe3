import type { Element, Netlist, NetlistInput } from '../model.ts';

/**
 * A netlist written down by hand, one element a line, for the examples beside the rules:
 *
 *     source bat b 0 13.8            volts, then: ohm (0.01), chargeable, parallelOk
 *     wire w1 b b1 2.5 0.2 25        mm², m, largest fuse A, then: bothWays
 *     fuse f1 b1 b2 10
 *     switch dash b2 s sw            input, then: not, max 1
 *     relay k 86 85 com no nc 90     coil, common, make, break (- where absent), coil ohm, then: pull 7.2, drop 1.6, max 30
 *     load lamp p m 13.5 6           rated V, ohm
 *     resistor r a b 10
 *     diode d a k
 *     input door door 0.3            kind, limit A
 */
export function sketch(text: string): Netlist {
  const elements: Element[] = [];
  const inputs: NetlistInput[] = [];
  const loads: string[] = [];
  for (const line of text.split('\n')) {
    const [kind, id, ...rest] = line.trim().split(/\s+/);
    if (kind === undefined || kind === '' || id === undefined) continue;
    const [a = '', b = '', c = '', d = '', e = '', f = ''] = rest;
    const has = (word: string) => rest.includes(word);
    const after = (word: string, otherwise: number) => (has(word) ? Number(rest[rest.indexOf(word) + 1]) : otherwise);
    const maxA = after('max', Number.NaN);
    switch (kind) {
      case 'source': {
        const ohm = Number(d) > 0 ? Number(d) : 0.01;
        const flags = { chargeable: has('chargeable'), parallelOk: has('parallelOk') };
        elements.push({ kind, id, p: a, n: b, volts: Number(c), ohm, ...flags });
        break;
      }
      case 'wire': {
        const [areaMm2, lengthM] = [Number(c), Number(d)];
        const ohm = (0.0178 * lengthM) / areaMm2;
        const ways = has('bothWays') ? { bothWays: true } : {};
        elements.push({ kind, id, a, b, areaMm2, lengthM, ohm, limitA: Number(e), ...ways });
        break;
      }
      case 'fuse':
        elements.push({ kind, id, a, b, ratingA: Number(c), ohm: 0.08 / Number(c) });
        break;
      case 'resistor':
        elements.push({ kind, id, a, b, ohm: Number(c) });
        break;
      case 'load':
        elements.push({
          kind,
          id,
          a,
          b,
          ratedV: Number(c),
          ohm: Number(d),
          model: 'resistive',
          onAboveFraction: after('from', 0.5),
        });
        loads.push(id);
        break;
      case 'switch': {
        const rating = Number.isNaN(maxA) ? {} : { maxA };
        elements.push({ kind, id, a, b, input: c, inverted: has('not'), ohm: 0.001, ...rating });
        if (!inputs.some((each) => each.id === c)) inputs.push({ id: c, kind: 'switch' });
        break;
      }
      case 'relay':
        elements.push({
          kind,
          id,
          coilP: a,
          coilN: b,
          com: c,
          no: d === '-' ? null : d,
          nc: e === '-' ? null : e,
          coilOhm: Number(f),
          pullInV: after('pull', 7.2),
          dropOutV: after('drop', 1.6),
          contactOhm: 0.005,
          ...(Number.isNaN(maxA) ? {} : { maxNoA: maxA, maxNcA: maxA }),
        });
        break;
      case 'diode':
        elements.push({ kind, id, a, k: b, forwardV: 0.7 });
        break;
      case 'input': {
        const limit = b === '' ? {} : { limitA: Number(b) };
        const input: NetlistInput = { id, kind: a as NetlistInput['kind'], ...limit };
        const at = inputs.findIndex((each) => each.id === id);
        if (at < 0) inputs.push(input);
        else inputs[at] = input;
        break;
      }
      default:
        throw new RangeError(`sketch: unexpected kind "${kind}" in "${line.trim()}"`);
    }
  }
  return { id: 'sketch', elements, inputs, loads };
}
