import { within } from './guard.ts';
import { atMost, type Verdict } from './verdict.ts';

/** Share of the maker's junction limit a fitted diode may reach. Common practice, no source. */
const JUNCTION_SHARE = 0.8;

/**
 * Will an isolation diode stay cool enough, and what does it leave for the load?
 *
 * @param options `currentA` 0.001 to 200; `forwardV` 0.1 to 2 (about 0.45 Schottky, 0.9 plain silicon at load); `heatKPerW` junction to air 0.1 to 500 (bare lead-mounted: about 50); `ambientC` -40 to 125; `junctionLimitC` 50 to 250; `supplyV` 1 to 60.
 * @returns `heatW`, `junctionC`, `limitC` (80 % of the maker's limit), `loadV`, `verdict` stop when hotter.
 * @throws TypeError or RangeError when a value is out of range.
 * Formula: heat = I × Vf; Tj = Tair + heat × Rth.
 * @source thermal Ohm's law; 80 % of the limit: common practice, no source.
 * @example isolationDiode({ currentA: 2.18, forwardV: 0.45, heatKPerW: 50, ambientC: 60, junctionLimitC: 150, supplyV: 11 }).loadV // 10.55
 */
export function isolationDiode({
  currentA,
  forwardV,
  heatKPerW,
  ambientC,
  junctionLimitC,
  supplyV,
}: {
  currentA: number;
  forwardV: number;
  heatKPerW: number;
  ambientC: number;
  junctionLimitC: number;
  supplyV: number;
}): { heatW: number; junctionC: number; limitC: number; loadV: number; verdict: Verdict } {
  const where = 'isolationDiode';
  within(where, 'currentA', currentA, 0.001, 200, 'A');
  within(where, 'forwardV', forwardV, 0.1, 2, 'V');
  within(where, 'heatKPerW', heatKPerW, 0.1, 500, 'K/W');
  within(where, 'ambientC', ambientC, -40, 125, '°C');
  within(where, 'junctionLimitC', junctionLimitC, 50, 250, '°C');
  within(where, 'supplyV', supplyV, 1, 60, 'V');
  const heatW = currentA * forwardV;
  const junctionC = ambientC + heatW * heatKPerW;
  const limitC = JUNCTION_SHARE * junctionLimitC;
  return {
    heatW,
    junctionC,
    limitC,
    loadV: supplyV - forwardV,
    verdict: atMost(junctionC, limitC) ? 'pass' : 'stop',
  };
}
