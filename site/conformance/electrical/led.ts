import {
  commonCurrentA,
  ledCurrentRatio,
  ledResistorOhm,
  ledSection,
  pointFromM,
  pointLx,
  stripEndDropV,
  stripFarShare,
  stripLabelCurrent,
  stripLx,
} from '../../../calc/index.ts';
import { num, type Shape } from '../row.ts';

/** A strip this long is without end for any distance in a room [m]. */
const ENDLESS_M = 10_000;
/** Error of the square law from five source sizes on, as the definition states it [%]. */
const POINT_ERROR_PERCENT = 1;

/** LED strings, strips and the light they give. */
export const led: readonly Shape[] = [
  {
    needs: ['supplyV', 'ledCount', 'forwardV', 'currentMa'],
    gives: ['resistorOhm'],
    answer: (inputs) => ({
      resistorOhm: ledResistorOhm({
        supplyV: num(inputs, 'supplyV'),
        ledCount: num(inputs, 'ledCount'),
        forwardV: num(inputs, 'forwardV'),
        currentA: num(inputs, 'currentMa') / 1000,
      }),
    }),
  },
  {
    needs: ['supplyV', 'ledCount', 'forwardV', 'resistorOhm'],
    gives: ['currentMa', 'resistorMw', 'sectionMw'],
    answer: (inputs) => {
      const { currentA, resistorW, sectionW } = ledSection({
        supplyV: num(inputs, 'supplyV'),
        ledCount: num(inputs, 'ledCount'),
        forwardV: num(inputs, 'forwardV'),
        resistorOhm: num(inputs, 'resistorOhm'),
      });
      return { currentMa: currentA * 1000, resistorMw: resistorW * 1000, sectionMw: sectionW * 1000 };
    },
  },
  {
    needs: ['supplyV1', 'supplyV2', 'ledCount', 'forwardV'],
    gives: ['currentRatio'],
    answer: (inputs) => ({
      currentRatio: ledCurrentRatio({
        supplyV: num(inputs, 'supplyV1'),
        raisedV: num(inputs, 'supplyV2'),
        ledCount: num(inputs, 'ledCount'),
        forwardV: num(inputs, 'forwardV'),
      }),
    }),
  },
  {
    needs: ['powerWPerM', 'supplyV', 'lengthM'],
    gives: ['currentA', 'currentAPerM'],
    answer: (inputs) =>
      stripLabelCurrent({
        powerWPerM: num(inputs, 'powerWPerM'),
        supplyV: num(inputs, 'supplyV'),
        lengthM: num(inputs, 'lengthM'),
      }),
  },
  {
    needs: ['currentAPerM', 'trackOhmPerMLoop', 'lengthM'],
    gives: ['dropV'],
    answer: (inputs) => ({
      dropV: stripEndDropV({
        currentAPerM: num(inputs, 'currentAPerM'),
        trackOhmPerM: num(inputs, 'trackOhmPerMLoop'),
        lengthM: num(inputs, 'lengthM'),
      }),
    }),
  },
  {
    needs: ['feed'],
    gives: ['shareOfOneEnd'],
    answer: ({ feed }) => {
      if (feed !== 'both ends') return undefined;
      const strip = { currentAPerM: 1, trackOhmPerM: 1, lengthM: 1 };
      return { shareOfOneEnd: stripEndDropV({ ...strip, ends: 2 }) / stripEndDropV(strip) };
    },
  },
  {
    needs: ['trackOhmPerMLoop', 'loadSiemensPerM', 'lengthM'],
    gives: ['ratio'],
    answer: (inputs) => ({
      ratio: stripFarShare({
        trackOhmPerM: num(inputs, 'trackOhmPerMLoop'),
        loadSiemensPerM: num(inputs, 'loadSiemensPerM'),
        lengthM: num(inputs, 'lengthM'),
      }),
    }),
  },
  {
    needs: ['redA', 'greenA', 'blueA'],
    gives: ['commonA'],
    answer: (inputs) => ({
      commonA: commonCurrentA({ coloursA: ['redA', 'greenA', 'blueA'].map((colour) => num(inputs, colour)) }),
    }),
  },
  {
    needs: ['fluxLmPerM', 'distanceM'],
    may: ['lengthM'],
    gives: ['illuminanceLx'],
    answer: (inputs) => ({
      illuminanceLx: stripLx({
        fluxLmPerM: num(inputs, 'fluxLmPerM'),
        distanceM: num(inputs, 'distanceM'),
        lengthM: 'lengthM' in inputs ? num(inputs, 'lengthM') : ENDLESS_M,
      }),
    }),
  },
  {
    needs: ['sourceSizeM'],
    gives: ['minDistanceM', 'errorPercent'],
    answer: (inputs) => ({
      minDistanceM: pointFromM({ lengthM: num(inputs, 'sourceSizeM') }),
      errorPercent: POINT_ERROR_PERCENT,
    }),
  },
  {
    needs: ['intensityCd', 'distanceM'],
    gives: ['illuminanceLx'],
    answer: (inputs) => ({
      illuminanceLx: pointLx({ intensityCd: num(inputs, 'intensityCd'), distanceM: num(inputs, 'distanceM') }),
    }),
  },
];
