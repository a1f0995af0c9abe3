import { coilClamp, coilCurrent, inrushMultiple, relayContacts, switchRating, tables } from '../../../calc/index.ts';
import { num, type Shape, word } from '../row.ts';

/** A name written from memory has no agreed wording, so it judges nobody's. */
const asRead = <T extends { read: string }>(row: T | undefined): T | undefined =>
  row?.read === 'seen' ? row : undefined;

const switched = (systemV: number, loadType: string, currentA: number): object | undefined =>
  switchRating({ systemV, loadType, currentA }) ?? undefined;

/** Contacts, coils and the numbers beside them. */
export const contacts: readonly Shape[] = [
  {
    needs: ['systemV', 'loadType'],
    gives: ['factor'],
    answer: (inputs) => switched(num(inputs, 'systemV'), word(inputs, 'loadType'), 1),
  },
  {
    needs: ['systemV', 'loadType', 'currentA'],
    gives: ['contactA'],
    answer: (inputs) => switched(num(inputs, 'systemV'), word(inputs, 'loadType'), num(inputs, 'currentA')),
  },
  {
    needs: ['contact'],
    gives: ['minV', 'minA'],
    answer: ({ contact }) => tables.LOW_ENERGY_CONTACT.find((row) => row.contact === contact),
  },
  {
    needs: ['loadType'],
    gives: ['multiple'],
    answer: (inputs) => inrushMultiple({ loadType: word(inputs, 'loadType') }) ?? undefined,
  },
  {
    // 30 is the battery in a loom and the common contact on a relay: the source says where we are.
    needs: ['terminal'],
    gives: ['meaning'],
    answer: ({ terminal }, { source }) => {
      const list = /7588/.test(source) ? tables.RELAY_TERMINALS : tables.TERMINALS;
      return asRead(list.find((row) => row.terminal === terminal));
    },
  },
  {
    needs: ['contact'],
    gives: ['meaning', 'areaMm2'],
    answer: ({ contact }) => asRead(tables.TRAILER_SOCKET_13.find((row) => row.contact === contact)),
  },
  {
    needs: ['coilOn'],
    gives: ['closed30To87a', 'closed30To87'],
    answer: ({ coilOn }) => (typeof coilOn === 'boolean' ? relayContacts({ coilOn }) : undefined),
  },
  {
    needs: ['from', 'to'],
    gives: ['swapped'],
    answer: ({ from, to }) => tables.RELAY_LAYOUTS.find((row) => row.from === from && row.to === to),
  },
  {
    needs: ['relay'],
    gives: ['widthMm'],
    answer: ({ relay }) => tables.RELAY_BODIES.find((row) => row.relay === relay),
  },
  {
    needs: ['systemV'],
    gives: ['coilA', 'coilOhm'],
    answer: ({ systemV }) => tables.TYPICAL_COILS.find((row) => row.systemV === systemV),
  },
  {
    needs: ['systemV', 'coilOhm', 'resistorOhm'],
    gives: ['currentA', 'resistanceOhm'],
    answer: (inputs) =>
      coilCurrent({
        systemV: num(inputs, 'systemV'),
        coilOhm: num(inputs, 'coilOhm'),
        resistorOhm: num(inputs, 'resistorOhm'),
      }),
  },
  {
    // The measured peak stands across the coil; at the output the supply comes on top.
    needs: ['systemV', 'coilOhm', 'resistorOhm'],
    gives: ['peakV'],
    answer: (inputs) => ({
      peakV: coilClamp({
        maxV: num(inputs, 'systemV'),
        coilOhm: num(inputs, 'coilOhm'),
        inductanceH: 0.25,
        clamp: 'resistor',
        clampOhm: num(inputs, 'resistorOhm'),
      }).acrossCoilV,
    }),
  },
  {
    needs: ['systemV', 'coilOhm'],
    gives: ['resistorMs', 'diodeMs'],
    answer: ({ systemV, coilOhm }) =>
      tables.RELEASE_SAMPLES.find((row) => row.systemV === systemV && row.coilOhm === coilOhm),
  },
  {
    needs: ['systemV'],
    gives: ['peakMinV', 'peakMaxV'],
    answer: ({ systemV }) => tables.BARE_COIL_PEAKS.find((row) => row.systemV === systemV),
  },
];
