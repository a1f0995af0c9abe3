import type { AstroComponentFactory } from 'astro/runtime/server/index.js';
import { components } from './index.ts';
import { kept } from './kept.ts';
import type { ComponentName } from './names.ts';

const KEPT: readonly ComponentName[] = [
  'BenchSheet',
  'CircuitDiagram',
  'FaultTable',
  'Findings',
  'FuseSizer',
  'GaugeChooser',
  'JobValues',
  'PartsList',
  'RelayDiagram',
  'TruthTable',
  'Value',
];

/** What a guide is given: every component, the instruments of its circuit drawn once. */
export const guideComponents: Readonly<Record<ComponentName, AstroComponentFactory>> = {
  ...components,
  ...Object.fromEntries(KEPT.map((name) => [name, kept(name, components[name])])),
};
