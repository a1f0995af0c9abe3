import {
  FLUX_HOLDS_TO_C,
  heatingTimeS,
  jointHeatJ,
  meltingRange,
  SOLDER_ALLOYS,
  SOLDER_HEAT,
  TIP_TIME,
  tipRange,
} from '../../calc/index.ts';
import { type Calculator, cell, choice, figure, number } from './form.ts';

const ALLOYS = SOLDER_ALLOYS.map(({ alloy }) => alloy);
/** A joint flows when it is this far above its liquidus [K] (common practice). */
const FLOW_K = 30;
/** Density of copper [g/cm³]. */
const COPPER_G_PER_CM3 = 8.96;

export const calculator: Calculator = {
  id: 'solder-heat',
  number: 'C30',
  title: 'Solder, iron and heat',
  lead: 'When an alloy melts, where to start with the iron, and how much heat the metal of a joint takes.',
  fields: () => [
    choice('alloy', 'Solder', 'Sn63Pb37', ALLOYS, 'Choose the alloy that is printed on the reel.'),
    number(
      'copperMm2',
      'Copper in the joint, cross-section',
      'area',
      1.5,
      [0.1, 50, 0.1],
      'Copper must be 0.1 to 50 mm².',
    ),
    number(
      'copperMm',
      'Copper that must get hot, length',
      'millimetres',
      10,
      [1, 100, 1],
      'Length must be 1 to 100 mm.',
    ),
    number('solderG', 'Solder', 'grams', 0.1, [0.01, 20, 0.01], 'Solder must be 0.01 to 20 g.'),
    number(
      'netW',
      'Heat that reaches the joint',
      'power',
      10,
      [1, 200, 1],
      'Heat that reaches the joint must be 1 to 200 W: a fraction of what is printed on the iron.',
    ),
  ],
  compute(input, { say }) {
    const alloy = input.s('alloy');
    const melting = meltingRange({ alloy });
    const liquidus = melting.liquidusC!;
    const tip = tipRange({ alloy });
    const row = SOLDER_ALLOYS.find((each) => each.alloy === alloy)!;
    const copperG = (input.n('copperMm2') * input.n('copperMm') * COPPER_G_PER_CM3) / 1000;
    const solderG = input.n('solderG');
    const endC = Math.min(liquidus + FLOW_K, 450);
    const leadFree = row.leadFree;
    const heatJ = jointHeatJ({
      copperG,
      solderG,
      startC: 20,
      endC,
      solderHeatJPerGK: leadFree ? SOLDER_HEAT.leadFreeHeatJPerGK.value : SOLDER_HEAT.tinLeadHeatJPerGK.value,
      latentJPerG: leadFree ? SOLDER_HEAT.leadFreeLatentJPerG.value : SOLDER_HEAT.tinLeadLatentJPerG.value,
    });
    const timeS = heatingTimeS({ energyJ: heatJ, netPowerW: input.n('netW') });
    const slow = timeS > TIP_TIME.retryLimitS;
    return {
      main: 'startC',
      flag: slow ? 'warn' : 'pass',
      flagText: slow ? 'Larger tip' : 'Start here',
      say: slow
        ? `${figure(timeS)} s is too long: a larger, wetted tip before a hotter one.`
        : `Sources give ${say(tip.fromC, 'temperature')} to ${say(tip.toC, 'temperature')}. Change the size of the tip before the heat.`,
      outputs: [
        { key: 'startC', label: 'Tip, to start with', value: tip.startC, kind: 'temperature' },
        { key: 'solidusC', label: 'Begins to melt', value: melting.solidusC!, kind: 'temperature' },
        { key: 'liquidusC', label: 'Is all liquid', value: liquidus, kind: 'temperature' },
        {
          key: 'paste',
          label: 'Paste between',
          value: melting.eutectic ? 'none' : `${figure(liquidus - melting.solidusC!)} K`,
        },
        { key: 'copperG', label: 'Copper', value: copperG, kind: 'grams' },
        { key: 'heatJ', label: 'Heat for the metal', value: `${figure(heatJ)} J` },
        {
          key: 'timeS',
          label: 'Time at that heat',
          value: timeS,
          kind: 'time',
          ...(slow ? { state: 'warn' as const } : {}),
        },
      ],
      formula: [
        cell('', 'Q', `${figure(heatJ)} J`, 'calc', 'heat for the metal'),
        cell('=', 'm', `${figure(copperG)} g`, 'set', 'copper, at 0.385 J/gK'),
        cell('×', 'ΔT', `${figure(endC - 20)} K`, 'calc', `to ${FLOW_K} K above the liquidus`),
        cell('+', 'solder', `${figure(solderG)} g`, 'set', 'warmed and melted'),
      ],
      work: [
        `time: ${figure(heatJ)} J ÷ ${say(input.n('netW'), 'power')} = ${say(timeS, 'time')}; a pad wants ${TIP_TIME.smallPadS.join(' to ')} s`,
        `most fluxes hold to about ${FLUX_HOLDS_TO_C} °C`,
        'the wire carries more heat away than the metal of the joint takes: this is the least',
      ],
    };
  },
  source:
    'Alloys: alloy property table (web); tip temperatures: five sources that do not agree, 280 to 398 °C; start 80 K above the liquidus: common practice; heats: materials comparison page, copper from memory',
  functions: ['meltingRange', 'tipRange', 'jointHeatJ', 'heatingTimeS'],
  cautions: [
    'The sheet of the solder in your hand comes first. Extract the fume, wash your hands, no solvent and no gas near the iron.',
    'A lead-free joint is dull when it is good: judge the edge, not the gloss.',
  ],
  example: {
    from: 'Alloy table for the eutectic; heat computed apart from this code',
    in: { alloy: 'Sn63Pb37', copperMm2: 1.5, copperMm: 10, solderG: 0.1, netW: 10 },
    out: { solidusC: '183', liquidusC: '183', copperG: '0.134', timeS: '1.73' },
  },
};
