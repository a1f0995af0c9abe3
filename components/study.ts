import { type Circuit, type Proof, prove } from '../calc/index.ts';
import type { ShopDefaults, Study } from './context.ts';

/** What a page shows of a proven circuit, by the names a guide uses. */
export function studyFrom(proof: Proof): Study {
  // where nothing fits, the size that stands in for it must not be read as an answer
  const reasons: Record<string, string> = {};
  for (const { rule, parts } of proof.findings) {
    const figure = rule === 'no-fuse-fits' ? 'ratingA' : rule === 'no-wire-fits' ? 'areaMm2' : undefined;
    if (figure === undefined) continue;
    for (const part of parts) reasons[`${part}.${figure}`] = figure === 'ratingA' ? 'no fuse fits' : 'no wire fits';
  }
  const figure = (path: string): number | null | undefined => {
    const dot = path.lastIndexOf('.');
    const value = proof.figures[path.slice(0, dot)]?.[path.slice(dot + 1)];
    return value === undefined || (Number.isFinite(value) && !(path in reasons)) ? value : null;
  };
  const choices = Object.entries(proof.choices);
  return {
    figure,
    // a page asks for a few at every step; all of them are for lists
    get figures() {
      const paths = Object.entries(proof.figures).flatMap(([id, own]) =>
        Object.keys(own).map((name) => `${id}.${name}`),
      );
      return Object.fromEntries(paths.map((path) => [path, figure(path)!]));
    },
    reasons,
    findings: proof.findings,
    fuses: Object.fromEntries(
      choices.flatMap(([id, choice]) => (choice.kind === 'fuse' ? [[id, choice.question]] : [])),
    ),
    wires: Object.fromEntries(
      choices.flatMap(([id, choice]) => (choice.kind === 'wire' ? [[id, choice.question]] : [])),
    ),
    proof,
  };
}

/** Stock and habits of the workshop, as sizing reads them. */
export const stockOf = (shop: ShopDefaults) => ({
  fusesA: shop.stockedFusesA,
  wiresMm2: shop.stockedWiresMm2,
  continuousFraction: shop.continuousFraction,
  dropFraction: shop.dropFraction,
});

/** Works a page's circuit out for given job values, without the study of every fault: quick enough to follow a stepper. */
export function studyOf(
  { circuit, shop }: { circuit: Circuit | null; shop: ShopDefaults },
  values: Readonly<Record<string, number>>,
  /** An earlier study of the same circuit: what hangs on its wiring is not looked for again. */
  after?: Study | null,
): Study | null {
  if (circuit === null) return null;
  return studyFrom(prove(circuit, values, { faults: false, stock: stockOf(shop), after: after?.proof }));
}
