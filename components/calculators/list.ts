import type { Calculator } from './form.ts';

/** Every calculator by id, in the order of the workshop's list; each is loaded alone. A new one is a file and a line here. */
export const calculators = {
  'load-current': () => import('./load-current.ts'),
  'strip-current': () => import('./strip-current.ts'),
  'fuse-size': () => import('./fuse-size.ts'),
  'wire-size': () => import('./wire-size.ts'),
  'wire-fuse-check': () => import('./wire-fuse-check.ts'),
  'volt-drop': () => import('./volt-drop.ts'),
  'bundle-derate': () => import('./bundle-derate.ts'),
  'fault-clear': () => import('./fault-clear.ts'),
  'relay-choose': () => import('./relay-choose.ts'),
  'coil-clamp': () => import('./coil-clamp.ts'),
  'diode-isolate': () => import('./diode-isolate.ts'),
  'sleep-days': () => import('./sleep-days.ts'),
  'charge-balance': () => import('./charge-balance.ts'),
  'run-time': () => import('./run-time.ts'),
  'charge-time': () => import('./charge-time.ts'),
  'light-level': () => import('./light-level.ts'),
  'aim-angle': () => import('./aim-angle.ts'),
  'strip-cut': () => import('./strip-cut.ts'),
  'tape-hold': () => import('./tape-hold.ts'),
  'wind-load': () => import('./wind-load.ts'),
  'camera-view': () => import('./camera-view.ts'),
  'cable-cut': () => import('./cable-cut.ts'),
  'lap-splice': () => import('./lap-splice.ts'),
  'shrink-fit': () => import('./shrink-fit.ts'),
  'loom-size': () => import('./loom-size.ts'),
  'tie-space': () => import('./tie-space.ts'),
  'crimp-pull': () => import('./crimp-pull.ts'),
  'solder-heat': () => import('./solder-heat.ts'),
  'tape-shake': () => import('./tape-shake.ts'),
  'surface-energy': () => import('./surface-energy.ts'),
  'growth-gap': () => import('./growth-gap.ts'),
  'ground-point': () => import('./ground-point.ts'),
} as const satisfies Record<string, () => Promise<{ calculator: Calculator }>>;
export type CalculatorId = keyof typeof calculators;
export const CALCULATOR_IDS = Object.keys(calculators) as readonly CalculatorId[];

export async function calculatorOf(id: CalculatorId): Promise<Calculator> {
  return (await calculators[id]()).calculator;
}

/** All of them, for lists and checks; a page loads only its own. */
export const allCalculators = (): Promise<Calculator[]> => Promise.all(CALCULATOR_IDS.map(calculatorOf));
