/** Ground points: how the metal is prepared, and what the drop across it says. */
import { whole, within } from './guard.ts';
import { type Cited, COMMON_PRACTICE } from './tables/cited.ts';

/** Most drop from lug to negative post at load current [V], and lugs on one stud. */
export const GROUND_LIMITS = { maxDropV: 0.1, goodLugs: 2, maxLugs: 3, ...COMMON_PRACTICE } as const;

export interface GroundStep {
  id: string;
  do: string;
  why: string;
}

/** Preparation of a ground point, in order. */
export const GROUND_STEPS: Cited & { steps: readonly GroundStep[] } = {
  steps: [
    {
      id: 'choose',
      do: "Find the maker's stud, or thick metal that is part of the frame; no rivet, no hinge, no trim bracket.",
      why: 'Thin or hinged metal is no reliable conductor.',
    },
    {
      id: 'traits',
      do: 'Check what the vehicle is: battery sensor, aluminium or GRP body, gas, high voltage.',
      why: 'The current has to come back past a battery sensor, and GRP does not conduct at all: run a return wire there.',
    },
    {
      id: 'clean',
      do: 'Clean to bright metal, a little larger than the lug.',
      why: 'Paint and rust insulate.',
    },
    {
      id: 'fasten',
      do: 'Lug flat on the metal, toothed washer, tighten to the table for its thread.',
      why: 'Pressure makes the contact; the teeth cut what film is left.',
    },
    {
      id: 'measure',
      do: 'Measure the drop under load, lug to negative post: 0.1 V or less.',
      why: 'A resistance that an ohm meter cannot see shows at load current.',
    },
    {
      id: 'seal',
      do: 'Seal with paint or paste after tightening, never between.',
      why: 'Metal to metal inside, paint outside keeps water off.',
    },
  ],
  ...COMMON_PRACTICE,
};

/**
 * Judges a finished ground point.
 * @param o.dropV [V] lug to negative post at load current, 0 to 30
 * @param o.lugs lugs on the stud, whole, 1 to 10
 * @param o.body 'steel', 'aluminium' or 'GRP'
 * @returns `verdict` 'accept' or 'reject', with reasons; no unit
 * @throws RangeError outside those ranges or for another body
 * @formula drop 0.1 V or less, three lugs or fewer, a body that conducts
 * @source common practice, no source
 * @example judgeGround({ dropV: 0.05, lugs: 2, body: 'steel' }).verdict // 'accept'
 */
export function judgeGround(o: { dropV: number; lugs: number; body: 'steel' | 'aluminium' | 'GRP' }): {
  verdict: 'accept' | 'reject';
  reasons: string[];
} {
  const drop = within('judgeGround', 'dropV', o.dropV, 0, 30, 'V');
  const lugs = whole('judgeGround', 'lugs', o.lugs, 1, 10);
  if (!['steel', 'aluminium', 'GRP'].includes(o.body)) {
    throw new RangeError(`judgeGround: unexpected body "${String(o.body)}", expected steel, aluminium or GRP`);
  }
  const reasons: string[] = [];
  if (o.body === 'GRP') reasons.push('GRP does not conduct: run a return wire to the frame.');
  if (drop > GROUND_LIMITS.maxDropV) reasons.push(`${drop} V of drop: ${GROUND_LIMITS.maxDropV} V or less.`);
  if (lugs > GROUND_LIMITS.maxLugs) reasons.push(`${lugs} lugs on one stud: ${GROUND_LIMITS.maxLugs} at most.`);
  return { verdict: reasons.length === 0 ? 'accept' : 'reject', reasons };
}
