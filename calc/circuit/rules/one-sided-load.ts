import { consumers } from './floating-load.ts';
import { capital, type Example, type FailingExample, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** Where a source reaches one end of a load, chassis can be reached from its other end. */
export const oneSidedLoad: Rule = {
  id: 'one-sided-load',
  severity: 'stop',
  title: 'Wired at one end only',
  why: 'Supply and chassis come to the same end; with the other end open nothing can flow.',
  cure: 'Wire the other end.',
  source: 'common practice, no source',
  check(look) {
    const supplied = look.reached();
    const returned = look.returned();
    return consumers(look).flatMap(({ id, ends, what }) => {
      const [a, b] = ends;
      const isSupplied = supplied.has(a) || supplied.has(b);
      const isReturned = returned.has(a) || returned.has(b);
      // With neither end supplied, or neither returned, floating-load and open-ground say so.
      if (!isSupplied || !isReturned) return [];
      if ((supplied.has(a) && returned.has(b)) || (supplied.has(b) && returned.has(a))) return [];
      return [{ parts: [id], message: `${capital(what)} gets its supply and its way to chassis at the same end.` }];
    });
  },
};

export const passes: Example[] = [
  {
    title: 'a motor between two changeovers',
    netlist: sketch(`
      source bat b 0 13.8
      switch up b c1 up
      switch down b c2 down
      relay k1 c1 0 m1 b 0 90
      relay k2 c2 0 m2 b 0 90
      load motor m1 m2 13.5 3`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'the second wire of the motor is missing',
    netlist: sketch(`
      source bat b 0 13.8
      switch up b c1 up
      relay k1 c1 0 m1 b 0 90
      load motor m1 m2 13.5 3`),
    messages: ['Load motor gets its supply and its way to chassis at the same end.'],
  },
];
