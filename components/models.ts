import type { CalculatorId } from './calculators/list.ts';
import type { ComponentModule } from './contract.ts';
import type { ComponentName, InnerName } from './names.ts';

/**
 * Model by name, loaded when first needed: a page fetches the models of the components that stand on it and no others.
 * Components that never change after the page is built have none.
 */
export const models: Partial<Record<ComponentName | InnerName, () => Promise<ComponentModule>>> = {
  FuseSizer: () => import('./fuse-sizer/model.ts'),
  GaugeChooser: () => import('./gauge-chooser/model.ts'),
  JobValue: () => import('./job-values/model.ts'),
  Station: () => import('./station/model.ts'),
  CircuitDiagram: () => import('./circuit-diagram/model.ts'),
  FaultFinding: () => import('./fault-finding/model.ts'),
  Findings: () => import('./findings/model.ts'),
  RelayDiagram: () => import('./relay-diagram/model.ts'),
  TruthTable: () => import('./truth-table/model.ts'),
  BenchSheet: () => import('./bench-sheet/model.ts'),
  Meter: () => import('./meter/model.ts'),
  PartsList: () => import('./parts-list/model.ts'),
  PadHeat: () => import('./lesson/pad-heat.ts'),
  PadLay: () => import('./lesson/pad-lay.ts'),
  WettingDrop: () => import('./lesson/wetting-drop.ts'),
  PrepSelector: () => import('./prep/model.ts'),
  Value: () => import('./value/model.ts'),
};

/** A component's model by the name on its root; `Calculator/fuse-size` is one of the calculators, which have a list of their own. */
export async function loadModel(name: string): Promise<ComponentModule | undefined> {
  if (name.startsWith('Calculator/')) {
    const [{ calculatorOf }, { calculatorModule }] = await Promise.all([
      import('./calculators/list.ts'),
      import('./calculators/model.ts'),
    ]);
    return calculatorModule(await calculatorOf(name.slice('Calculator/'.length) as CalculatorId));
  }
  return (models as Record<string, (() => Promise<ComponentModule>) | undefined>)[name]?.();
}
