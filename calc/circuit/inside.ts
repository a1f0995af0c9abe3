/** Voltages and floating parts of every node of a solved network, those inside chains too. */
import { floatingParts } from './matrix.ts';
import { LEAST_V, type Network, type Variant } from './network.ts';

export interface Everywhere {
  /** By place of node. */
  voltageV: Float64Array;
  /** Floating part of each node, -1 where something ties it to chassis. */
  part: Int32Array;
}

/** Of the network solved last, at the positions it was solved for. */
export function everywhere(network: Network, variant: Variant, level: Uint8Array): Everywhere {
  const { compiled, present, from, to, between, far } = network;
  const { cut } = variant;
  const voltageV = new Float64Array(compiled.wiring.nodes.length);
  voltageV.set(present.voltageV);
  const part = new Int32Array(compiled.wiring.nodes.length);
  part.set(floatingParts(compiled.wiring.plan, network.workspace));
  const inside = new Inside(network, variant, level, { voltageV, part });
  for (let c = 0; c < far; c++) {
    const places = between[c]!;
    if (places.length === 0) continue;
    if (cut?.chain === c) {
      const at = places[cut.after - 1]!;
      voltageV[at] = present.insideV;
      part[at] = -1;
      inside.walk(c, c, 0, cut.after, from[c]!, at);
      inside.walk(c, far, cut.after, places.length + 1, at, to[c]!);
    } else inside.walk(c, c, 0, places.length + 1, from[c]!, to[c]!);
  }
  return { voltageV, part };
}

class Inside {
  private readonly network: Network;
  private readonly variant: Variant;
  private readonly level: Uint8Array;
  private readonly into: Everywhere;
  private parts: number;

  constructor(network: Network, variant: Variant, level: Uint8Array, into: Everywhere) {
    this.network = network;
    this.variant = variant;
    this.level = level;
    this.into = into;
    this.parts = into.part.length;
  }

  /** One stretch of a chain, links `first` to `end` (not included), between two places whose voltages are known. */
  walk(chain: number, s: number, first: number, end: number, begin: number, finish: number): void {
    const { network, variant } = this;
    const { voltageV, part } = this.into;
    const places = network.between[chain]!;
    const { links } = network.compiled.wiring.chains[chain]!;
    const beginV = begin < 0 ? 0 : voltageV[begin]!;
    const beginPart = begin < 0 ? -1 : part[begin]!;
    if (network.present.conductance[s] !== 0) {
      const currentA = network.flowA(variant, s, network.present);
      let volts = beginV;
      for (let i = first; i < end - 1; i++) {
        const { branch, sign } = links[i]!;
        volts -= currentA / variant.siemens[branch]! + sign * variant.offsetV[branch]!;
        voltageV[places[i]!] = volts;
        part[places[i]!] = beginPart;
      }
      return;
    }
    // No current: what is joined to an end has its voltage, what is joined to none floats. A diode beside an open contact
    // passes a voltage on, but no current.
    const emfV = (i: number) => links[i]!.sign * variant.offsetV[links[i]!.branch]!;
    let opened = false;
    for (let i = first; i < end; i++) opened ||= !network.conducts(variant, chain, i, this.level);
    const stops = (i: number, forwardV: number) =>
      !network.conducts(variant, chain, i, this.level) ||
      (network.blocks(variant, chain, i) && !(opened && forwardV > emfV(i) + LEAST_V));
    let left = first;
    for (let volts = beginV; left < end - 1 && !stops(left, volts); left++) {
      volts -= emfV(left);
      voltageV[places[left]!] = volts;
      part[places[left]!] = beginPart;
    }
    let right = end - 1;
    for (let volts = finish < 0 ? 0 : voltageV[finish]!; right > left && !stops(right, -volts); right--) {
      volts += emfV(right);
      voltageV[places[right - 1]!] = volts;
      part[places[right - 1]!] = finish < 0 ? -1 : part[finish]!;
    }
    for (let i = left, volts = 0; i < right; i++) {
      if (i === left || stops(i, 0)) {
        volts = 0;
        this.parts++;
      } else volts -= emfV(i);
      voltageV[places[i]!] = volts;
      part[places[i]!] = this.parts;
    }
  }
}
