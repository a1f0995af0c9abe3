import { fuseOpens } from '../../fuse.ts';
import { adiabaticK, adiabaticTimeS } from '../../protection.ts';
import type { FuseForm } from '../../tables/blade-fuses.ts';
import { type Draft, type Example, type FailingExample, figure, type Look, type Rule } from './rule.ts';
import { shortCurrents } from './short-currents.ts';
import { sketch } from './sketch.ts';

/** PVC starting warm and ending where it softens; the cautious pair of the printed ones. */
const START_C = 70;
const END_C = 160;

/** In a short the fuse opens before the wire is hurt. */
export const shortOutlastsWire: Rule = {
  id: 'short-outlasts-wire',
  severity: 'stop',
  title: 'The fuse opens after the wire is hurt',
  why: 'In a short the insulation melts before the fuse opens.',
  cure: 'A smaller or quicker fuse, or thicker wire.',
  source: 'adiabatic equation of IEC 60364-4-43; operating times of ISO 8820-3 from memory',
  check(look) {
    const { kAS05PerMm2 } = adiabaticK({ startC: START_C, endC: END_C });
    return shortCurrents(look).flatMap((short): Draft[] => {
      const wire = look.element.get(short.wire);
      if (wire?.kind !== 'wire') return [];
      const form = formOf(look, short.fuse);
      // Heat and opening time both fall with the square of the current, but not in step: both ends of the wire count.
      for (const currentA of [short.farA, short.nearA]) {
        if (!(currentA > 0)) continue;
        const standsS = adiabaticTimeS({ areaMm2: wire.areaMm2, kAS05PerMm2, currentA });
        const { maxS } = fuseOpens({ ratingA: short.ratingA, form, currentA: Math.min(currentA, 100_000) });
        // Without a latest time the fuse may never open: short-keeps-burning says so.
        if (maxS === null || maxS <= standsS) continue;
        return [
          {
            parts: [short.fuse, short.wire],
            message:
              `A short on ${look.name(short.wire)} draws ${figure(currentA)} A; ${look.name(short.fuse)} may take ` +
              `${figure(maxS)} s to open and the wire stands it ${figure(standsS)} s.`,
          },
        ];
      }
      return [];
    });
  },
};

function formOf(look: Look, fuse: string): FuseForm {
  const part = look.written?.circuit.parts[look.ownerOf(fuse)];
  if (part?.kind !== 'fuse') return 'C';
  return part.form === 'strip' ? 'E' : part.form;
}

export const passes: Example[] = [
  {
    title: '0.5 mm² behind 5 A',
    netlist: sketch(`
      source bat b 0 13.8
      fuse f1 b b2 5
      wire w1 b2 p 0.5 2 5
      load lamp p 0 13.5 6`),
  },
];

export const fails: FailingExample[] = [
  {
    title: 'a hair of wire behind 40 A',
    netlist: sketch(`
      source bat b 0 13.8 0.01
      fuse f1 b b2 40
      wire w1 b2 p 0.5 3 40
      load lamp p 0 13.5 6`),
    messages: ['A short on wire w1 draws 116 A; fuse f1 may take 5 s to open and the wire stands it 0.245 s.'],
  },
];
