/** Groups of calculators on their list, in the order a job needs them. */
export const CALCULATOR_GROUPS = [
  { id: 'load-and-fuse', title: 'Load, fuse and wire', symbol: 'fuse' },
  { id: 'switching', title: 'Relays and diodes', symbol: 'relay' },
  { id: 'battery', title: 'Battery and charging', symbol: 'battery' },
  { id: 'light', title: 'Light and camera', symbol: 'lamp' },
  { id: 'fixing', title: 'Fixing and cutting', symbol: 'tape' },
  { id: 'joints', title: 'Joints and runs', symbol: 'join' },
] as const;
type GroupId = (typeof CALCULATOR_GROUPS)[number]['id'];

const GROUP: Readonly<Record<string, GroupId>> = {
  'relay-choose': 'switching',
  'coil-clamp': 'switching',
  'diode-isolate': 'switching',
  'sleep-days': 'battery',
  'charge-balance': 'battery',
  'run-time': 'battery',
  'charge-time': 'battery',
  'light-level': 'light',
  'aim-angle': 'light',
  'camera-view': 'light',
  'strip-cut': 'fixing',
  'tape-hold': 'fixing',
  'wind-load': 'fixing',
  'cable-cut': 'fixing',
  'tape-shake': 'fixing',
  'growth-gap': 'fixing',
  'surface-energy': 'fixing',
  'lap-splice': 'joints',
  'shrink-fit': 'joints',
  'loom-size': 'joints',
  'tie-space': 'joints',
  'crimp-pull': 'joints',
  'solder-heat': 'joints',
  'ground-point': 'joints',
};

/** Group of a calculator; one that is not named stands with load, fuse and wire. */
export const groupOf = (id: string): GroupId => GROUP[id] ?? 'load-and-fuse';
