import { consumers } from './floating-load.ts';
import { capital, type Example, type FailingExample, type Rule } from './rule.ts';
import { sketch } from './sketch.ts';

/** C09: every load and coil has a way back to chassis that crosses no other load. */
export const openGround: Rule = {
  id: 'open-ground',
  neutralId: 'C09',
  severity: 'stop',
  title: 'No way back to chassis',
  why: 'A ground through a lamp works only while that lamp is intact and cold; with no ground at all nothing works.',
  cure: 'Run the return wire to a ground point or to the battery negative.',
  source: 'common practice, no source',
  check(look) {
    const returned = look.returned();
    return consumers(look).flatMap(({ id, ends, what }) => {
      if (ends.some((node) => returned.has(node))) return [];
      return [
        { parts: [id], message: `${capital(what)} has no way to chassis that does not lead through another load.` },
      ];
    });
  },
};

export const passes: Example[] = [
  {
    title: 'return through a switch and a resistor',
    netlist: sketch(`
      source bat b 0 13.8
      load lamp b m 13.5 6
      resistor r m s 2
      switch dash s 0 sw`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'the return wire ends on the supply of another lamp',
    netlist: sketch(`
      source bat b 0 13.8
      switch dash b p sw
      load lamp p 0 13.5 6
      load aux b m 13.5 6
      wire w m p 1 1 10`),
    messages: ['Load aux has no way to chassis that does not lead through another load.'],
  },
];
