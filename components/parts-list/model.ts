import { cutList, partsList } from '../../calc/index.ts';
import type { Model, View } from '../contract.ts';
import { framed } from '../instrument.ts';
import { say } from '../show.ts';

export interface PartsListProps {
  cuts?: boolean | undefined;
}

/** Parts by kind and size, wire by the reel with its slack, and each piece of wire to cut. */
export const model = ((_props, job) => {
  const { circuit, study, units, shop } = job;
  const slack = `${+(shop.slackFraction * 100).toFixed(1)} %`;
  const frame = {
    source: `Counted from the circuit; ${slack} service slack is the workshop’s own`,
    spokenName: 'Parts list',
  };
  if (circuit === null || study === null) {
    const none = { flag: 'unk', flagText: 'Not worked out', spokenValue: 'not worked out' } as const;
    return { ...framed(job, { ...frame, ...none }), rows: [] as View[], cuts: [] as View[], slack };
  }
  const options = { slackFraction: shop.slackFraction };
  const parts = partsList(circuit, study.proof, options);
  const rows = parts.map(
    (row): View => ({
      what:
        row.areaMm2 === undefined || row.kind !== 'wire'
          ? row.what
          : row.what.replace(/^Wire [\d.]+ mm²/, `Wire ${say(row.areaMm2, 'area', units)}`),
      ids: row.for.length > 6 ? `${row.for.slice(0, 5).join(', ')} and ${row.for.length - 5} more` : row.for.join(', '),
      amount: row.lengthM === undefined ? String(row.count) : say(row.lengthM, 'length', units),
    }),
  );
  const cuts = cutList(circuit, study.proof, options).map(
    (cut): View => ({
      wire: cut.wire,
      size: say(cut.areaMm2, 'area', units),
      colour: cut.colour ?? '',
      from: cut.from.replace('.', ' '),
      to: cut.to.replace('.', ' '),
      cut: say(cut.cutM, 'length', units),
    }),
  );
  const copperM = parts.reduce((sum, row) => sum + (row.lengthM ?? 0), 0);
  return {
    ...framed(job, {
      ...frame,
      flag: 'note',
      flagText: `${rows.length} lines`,
      spokenValue: `${rows.length} lines, ${say(copperM, 'length', units)} of wire`,
    }),
    rows,
    cuts,
    slack,
  };
}) satisfies Model<PartsListProps>;
