/** What each step of a preparation says: do, how much, how long, why, what to wear, what not to do. */
import type { Need } from './prep.ts';
import { PRIMERS, type PrepStepId, type SurfaceFacts } from './prep-surface.ts';
import type { Place, TapeClass } from './tables/tapes.ts';
import { PRESS_PRESSURE, pressForce } from './tape.ts';

export interface PrepStep {
  id: PrepStepId;
  do: string;
  quantity?: string;
  /** [s] where a wait is known. */
  waitS?: number;
  waitText?: string;
  why: string;
  wear?: string;
  dont?: string;
}

export interface StepContext {
  surface: SurfaceFacts;
  tape: TapeClass;
  place: Place;
  surfaceC: number;
  warmToC: number;
  need: Need;
  widthMm: number | undefined;
  areaCm2: number | undefined;
  loadAfterH: number;
  fullStrengthH: number;
}

type Words = Omit<PrepStep, 'id'>;

const GLOVES = 'Nitrile gloves, eye protection, fresh air; no flame, no iron, no heat gun.';
const round = (value: number): string => String(Math.round(value));

/** Alcohol for one pass: a cloth just wet, about 1 ml on 100 cm² (common practice), never under 1 ml. */
const wipeQuantity = ({ areaCm2 }: StepContext): string =>
  areaCm2 === undefined
    ? 'Isopropyl alcohol, 50 to 70 % in water; the cloth just wet, not dripping.'
    : `Isopropyl alcohol, 50 to 70 % in water; about ${round(Math.max(1, areaCm2 / 100))} ml a pass on ${round(areaCm2)} cm².`;

const wipe = (context: StepContext, first: string, why: string): Words => ({
  do: `${first} One direction, one pass a cloth face; then a second clean cloth before it has evaporated. New lint-free cloths until the last one stays white.`,
  quantity: wipeQuantity(context),
  why,
  wear: GLOVES,
  dont: 'No circles, no laundered rags: they spread the dirt and carry softener and wax.',
});

const primer = (context: StepContext, name: string, extra: string): Words => ({
  do: `Put ${name} on thin, in one direction, inside the tape's footprint only. Dip a disposable applicator once and throw it away.`,
  quantity: 'One thin coat.',
  waitText: 'As the label of the primer says; some are wiped off, some left to flash.',
  why: context.surface.primer?.why ?? extra,
  wear: GLOVES,
  dont: extra,
});

const MAKE: Record<PrepStepId, (context: StepContext) => Words> = {
  warm: ({ surface, warmToC, surfaceC }) => ({
    do: `Warm the surface and the part from ${round(surfaceC)} °C to ${round(warmToC)} °C or more, in a warm room or with warm air, before any solvent is opened. Measure the surface, not the air.`,
    quantity: `${round(warmToC)} °C or more; 21 to 38 °C is best; never above ${round(surface.warmMaxC)} °C on this surface.`,
    why: 'Cold adhesive does not flow into the surface, and a cold panel is wet with dew though it looks dry.',
    dont: 'No heat gun near airbags, and none while solvent or its smell is about.',
  }),
  cool: ({ surfaceC }) => ({
    do: `Shade the surface and let it cool from ${round(surfaceC)} °C to 38 °C or below.`,
    quantity: '21 to 38 °C is best, never above 44 °C.',
    why: 'On a hot panel the wipe dries before it has lifted the dirt, and the tape is soft while it is placed.',
  }),
  inspect: ({ surface }) => ({
    do: `Make sure what it is: ${surface.name}. Look for anything loose, cracked, chalky or mended. Press ordinary tape on any coating and pull it off: nothing may come with it.`,
    why: 'Tape holds to what it touches, and that has to hold to the vehicle.',
  }),
  'wait-paint': () => ({
    do: 'Ask when it was painted. Wait at least five days after refinishing; air-dried paint may need weeks.',
    waitS: 5 * 24 * 3600,
    waitText: '5 days or what the paint maker says, whichever is longer.',
    why: 'Fresh paint gives off solvent and lifts the tape from below.',
  }),
  'spot-test': () => ({
    do: 'Try every liquid of this list on a hidden spot first and look again after ten minutes: dull, sticky, cracked or discoloured means do not use it.',
    waitS: 600,
    why: 'A stressed or coated plastic can craze or stain though its name says it should not.',
  }),
  'remove-coating': () => ({
    do: 'Take the coating off the whole footprint down to the sound plastic below, with alcohol and a plastic scraper.',
    quantity: 'Until the plastic is bare, dry to the touch and the cloth stays clean.',
    why: 'The coating lets go of the part before the tape lets go of the coating.',
    wear: GLOVES,
    dont: 'No metal scraper and no stronger solvent than the plastic below stands.',
  }),
  'soap-water': () => ({
    do: 'Wash with lukewarm water and a neutral soap, rinse twice with clean water, dry with a lint-free cloth.',
    why: 'Dirt and road film first: a solvent would only spread them. Soap left behind is a film of its own.',
    dont: 'No wash-and-wax, no dish soap with balm.',
  }),
  degrease: () => ({
    do: 'Take oil, wax and silicone off with a degreaser: wet a cloth, wipe one way, turn to a clean face each pass.',
    quantity: 'Until a white cloth stays white.',
    why: 'Alcohol alone moves grease about. The degreaser leaves a film itself, so the alcohol wipe comes after.',
    wear: GLOVES,
    dont: 'Do not spray it on: it runs into seams and under trim.',
  }),
  'ipa-wipe': (context) =>
    wipe(context, 'Wipe with alcohol and water.', 'Takes off finger grease and what the degreaser left.'),
  'ipa-wipe-2': (context) =>
    wipe(context, 'Wipe again after abrading.', 'Dust in the scratches is a layer of its own.'),
  'ipa-wipe-sealed': (context) =>
    wipe(context, 'Wipe the sealed face once it is hard.', 'The seal is now the surface.'),
  abrade: ({ surface }) => ({
    do: surface.abrade.how,
    why: 'A sound, keyed face instead of oxide, chalk or release wax.',
    wear: 'Dust mask and eye protection.',
    dont: "Stay inside the tape's footprint; a scratch that shows stays.",
  }),
  seal: ({ surface }) => ({
    do: surface.porous
      ? 'Seal the footprint with varnish or primer, two thin coats, the second when the first is dry.'
      : 'Seal the cleaned metal with a clear lacquer made for it, one thin coat.',
    waitText: 'Until it is hard, as the label of the sealer says.',
    why: surface.porous
      ? 'Pores swallow the adhesive and let damp in behind it.'
      : 'This metal corrodes under adhesive when it is left bare.',
    wear: GLOVES,
  }),
  dry: () => ({
    do: 'Let it dry until no wet shine and no smell is left, edges and seams too.',
    waitText: 'Minutes in a warm room; longer when cold or damp.',
    why: 'Liquid under the tape keeps it off, and vapour near an iron or heat gun burns.',
  }),
  'water-break': () => ({
    do: 'Run clean water over it: the film must drain off whole for a minute. Then dry with a fresh cloth and wipe once more with alcohol and water.',
    waitS: 60,
    why: 'Beads or a torn film mean wax, silicone or oil is still there.',
    dont: 'Soap left on the surface passes this test too.',
  }),
  'prime-silane': (context) =>
    primer(context, PRIMERS.silane.name, 'Not on plastics. Keep it off paint, heater lines and aerials.'),
  'prime-cpo': (context) => primer(context, PRIMERS.cpo.name, 'It may discolour what shows beside the tape.'),
  'prime-universal': (context) =>
    primer(context, PRIMERS.universal.name, 'It may discolour what shows beside the tape: after the hidden spot only.'),
  'prime-self-etch': (context) =>
    primer(context, PRIMERS['self-etch'].name, 'For bare metal and glass; never on bare plastic.'),
  'flash-off': () => ({
    do: 'Let the primer flash off until it is dry to the touch, then tape at once.',
    waitText: 'By the label: no general time is known for tape primers.',
    why: 'Wet primer is grease to the tape; old primer is dust.',
    dont: 'Do not touch it, do not let dust settle.',
  }),
  'test-patch': () => ({
    do: 'Stick a 25 × 25 mm patch of the same tape on a hidden spot, prepared the same way, press it, and try to lift it with a fingernail after 24 hours and, where softener may come out, after four weeks.',
    waitS: 24 * 3600,
    why: 'Nobody has listed this surface: only the patch knows.',
    dont: 'Do not fit the part before the patch has passed.',
  }),
  apply: ({ surface, place }) => ({
    do: 'Within 30 minutes of the last cleaning, and at once after a primer: peel 50 mm of liner, place, and peel on as you press. Do not stretch the tape, do not touch the adhesive.',
    waitS: 0,
    why: 'A cleaned surface gets dirty again by itself, and a lifted tape never sticks twice.',
    ...(surface.porous || !place.outside ? {} : { dont: 'Not on a wet or dewy panel, and not in rain.' }),
  }),
  press: ({ widthMm }) => ({
    do: 'Press the whole length with a roller or thumb, twice, from the middle outwards.',
    quantity:
      widthMm === undefined
        ? `About ${PRESS_PRESSURE.minKpa} kPa: 10 N for each centimetre of tape width under the roller.`
        : `About ${PRESS_PRESSURE.minKpa} kPa: ${round(pressForce({ widthMm, lengthMm: 10 }).forceN)} N on each centimetre of this ${round(widthMm)} mm tape.`,
    why: 'The adhesive has to flow into the surface; pressure does that, not time alone.',
  }),
  dwell: ({ loadAfterH, fullStrengthH, place }) => ({
    do: `Leave it alone: no load for the first hour, load after ${round(loadAfterH)} h, full strength at ${round(fullStrengthH)} h. Write the date and hour on the sheet.${place.outside ? ' Do not wash the vehicle for 24 h.' : ''}`,
    waitS: Math.round(loadAfterH * 3600),
    waitText: 'Near 21 °C. Colder is slower, and nobody has a figure for how much: keep it warm.',
    why: 'Strength builds on the logarithm of time: half soon, the rest over three days.',
    dont: 'Do not pull it to see: that breaks the bond while it forms.',
  }),
  'mechanical-fix': ({ surface }) => ({
    do: surface.fixing,
    why: surface.bond === 'tape' ? 'It holds the part if the tape lets go.' : surface.bondWhy,
    dont: 'Look behind before drilling or screwing; never near airbags, tanks, brake or fuel pipes, or high voltage.',
  }),
};

/** A step's words for this surface, tape and place; the surface's own words take the place of the general ones. */
export function prepStep(id: PrepStepId, context: StepContext): PrepStep {
  const words = MAKE[id](context);
  const own = context.surface.stepWords?.[id];
  return { id, ...words, ...(own === undefined ? {} : { do: own }) };
}
