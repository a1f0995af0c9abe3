import { CHASSIS, type Circuit, type Node, type TerminalRef } from './model.ts';
import { terminalsOf } from './terminals.ts';

/**
 * The electrical points of a circuit: terminals that sit on each other (joined, or on one splice) are one point.
 *
 * A point is named after the splice in it, else after its first terminal; the chassis is always `'0'`. References that
 * mean nothing are left out: `circuitProblems` reports them.
 */
export class Points {
  /** Every way to write a terminal, with the one way it is kept. */
  private readonly keys = new Map<string, string>();
  private readonly parent = new Map<string, string>();
  private readonly names = new Map<string, Node>();
  private readonly circuit: Circuit;

  constructor(circuit: Circuit) {
    this.circuit = circuit;
    const used = new Set<string>();
    for (const wire of Object.values(circuit.wires)) used.add(wire.from).add(wire.to);
    for (const part of Object.values(circuit.parts)) for (const ref of Object.values(part.join ?? {})) used.add(ref);

    this.keys.set(CHASSIS, CHASSIS);
    this.parent.set(CHASSIS, CHASSIS);
    for (const [id, part] of Object.entries(circuit.parts)) {
      const terminals = terminalsOf(part);
      const isSole = terminals.length === 1;
      for (const { name } of terminals) {
        // `S1.out` and `S1` are the same terminal of a part that has one.
        const key = isSole ? id : `${id}.${name}`;
        this.keys.set(`${id}.${name}`, key);
        this.keys.set(key, key);
        this.parent.set(key, key);
      }
    }
    for (const [id, part] of Object.entries(circuit.parts)) {
      for (const [name, ref] of Object.entries(part.join ?? {})) this.unite(`${id}.${name}`, ref);
      if (part.kind === 'battery' && part.join?.['-'] === undefined && !used.has(`${id}.-`)) {
        this.unite(`${id}.-`, CHASSIS);
      }
      // A ground point without resistance is the chassis itself.
      if (part.kind === 'chassis' && (part.ohm ?? 0) === 0) this.unite(id, CHASSIS);
    }
    this.nameAll();
  }

  /** The point that a terminal belongs to, or undefined where the reference means nothing. */
  of(ref: TerminalRef): Node | undefined {
    const key = this.key(ref);
    return key === undefined ? undefined : this.names.get(this.root(key));
  }

  /** Every terminal with its point, in the order of the file. */
  all(): Record<TerminalRef, Node> {
    const all: Record<TerminalRef, Node> = {};
    for (const key of this.parent.keys()) if (key !== CHASSIS) all[key] = this.names.get(this.root(key))!;
    return all;
  }

  private key(ref: TerminalRef): string | undefined {
    return this.keys.get(ref);
  }

  private root(key: string): string {
    let at = key;
    while (this.parent.get(at) !== at) at = this.parent.get(at)!;
    // Path compression keeps long chains of joins cheap.
    let step = key;
    while (step !== at) {
      const next = this.parent.get(step)!;
      this.parent.set(step, at);
      step = next;
    }
    return at;
  }

  private unite(a: TerminalRef, b: TerminalRef): void {
    const [keyA, keyB] = [this.key(a), this.key(b)];
    if (keyA === undefined || keyB === undefined) return;
    const [rootA, rootB] = [this.root(keyA), this.root(keyB)];
    if (rootA === rootB) return;
    if (rootA === CHASSIS) this.parent.set(rootB, rootA);
    else this.parent.set(rootA, rootB);
  }

  private nameAll(): void {
    for (const key of this.parent.keys()) {
      const root = this.root(key);
      const isSplice = this.circuit.parts[key]?.kind === 'splice';
      if (root === CHASSIS) this.names.set(root, CHASSIS);
      else if (isSplice || !this.names.has(root)) this.names.set(root, key);
    }
  }
}
