import { FUSE_FORMS, type FuseForm, fuseCurrentMa, fuseFor, fuseOpens, i2tTimeS, tables } from '../../../calc/index.ts';
import { num, type Row, type Shape, type Value, word } from '../row.ts';

/** `C`, `C medium`, `ISO 8820-3 type C`: the letter is what counts. */
const formOf = (text: string): FuseForm | undefined => {
  const letter = /^(?:.*type )?([A-Z])\b/.exec(text)?.[1];
  return FUSE_FORMS.find((form) => form === letter);
};

/** Fuses are timed at room temperature; another is another table. */
const GATES_C = 23;

/** An opening, with no latest time left out as the rows leave it out. */
const opening = (ratingA: number, form: FuseForm, currentA: number): object => {
  const { minS, maxS } = fuseOpens({ ratingA, form, currentA });
  return maxS === null ? { minS } : { minS, maxS };
};

/** Limits of fuses that are not blades: the row's source says which kind. */
function cartridge(row: Row, inputs: Record<string, Value>, ratingA: number): object | undefined {
  const multiple = num(inputs, 'multipleOfRating');
  return tables.CARTRIDGE_LIMITS.find(
    (each) =>
      each.multiple === multiple &&
      ratingA > each.fromA &&
      ratingA <= each.toA &&
      (each.kind === 'general') === /general|derating/.test(`${row.about} ${row.source}`) &&
      Object.keys(row.expect).every((key) => key in each),
  );
}

/** Smallest rating of a blade form for a load, or null where none is: no wire limits it here. */
function sized(inputs: Record<string, Value>): object | undefined {
  const form = formOf(word(inputs, 'ratings'));
  if (form === undefined) return undefined;
  const fuse = fuseFor({
    currentA: num(inputs, 'currentA'),
    continuousFraction: num(inputs, 'continuousFraction'),
    form,
    wires: [{ name: 'any wire', limitA: 1000 }],
  });
  return { fuseA: fuse.found ? fuse.ratingA : null };
}

/** Ratings, colours, times and rules of fuses. */
export const fuses: readonly Shape[] = [
  {
    needs: ['type'],
    gives: ['ratingsA'],
    answer: (inputs) => tables.BLADE_RATINGS.find((row) => row.form === formOf(word(inputs, 'type'))),
  },
  {
    needs: ['type'],
    gives: ['ratedV', 'maxRatingA'],
    answer: ({ type }) => (type === 'blade' ? tables.BLADE_VOLTAGE : undefined),
  },
  {
    needs: ['ratingA', 'type'],
    gives: ['colour'],
    answer: (inputs) => {
      const form = formOf(word(inputs, 'type'));
      return tables.BLADE_COLOURS.find(
        (row) => form !== undefined && row.ratingA === inputs['ratingA'] && row.forms.includes(form),
      );
    },
  },
  {
    needs: ['type', 'multipleOfRating', 'temperatureC'],
    gives: ['minS', 'maxS'],
    answer: (inputs) => {
      const form = formOf(word(inputs, 'type'));
      if (form === undefined || inputs['temperatureC'] !== GATES_C) return undefined;
      return opening(1, form, num(inputs, 'multipleOfRating'));
    },
  },
  {
    needs: ['ratingA', 'type', 'currentA'],
    gives: ['minS', 'maxS'],
    answer: (inputs) => {
      const form = formOf(word(inputs, 'type'));
      return form === undefined ? undefined : opening(num(inputs, 'ratingA'), form, num(inputs, 'currentA'));
    },
  },
  {
    needs: ['multipleOfRating'],
    gives: ['mustCarry', 'minMinutes'],
    answer: (inputs) =>
      num(inputs, 'multipleOfRating') === tables.MUST_CARRY.multiple
        ? { mustCarry: true, minMinutes: tables.MUST_CARRY.minMinutes }
        : undefined,
  },
  {
    needs: ['ratingA', 'multipleOfRating'],
    gives: ['minS', 'maxS'],
    answer: (inputs, row) => cartridge(row, inputs, num(inputs, 'ratingA')),
  },
  {
    needs: ['multipleOfRating'],
    may: ['ratingRangeA'],
    gives: ['minS', 'maxS'],
    answer: (inputs, row) => {
      const range = inputs['ratingRangeA'];
      const upTo = typeof range === 'string' ? Number(range.split('-')[1]) : 60;
      return cartridge(row, inputs, upTo);
    },
  },
  {
    // Two rules of thumb for one question: the source tells them apart.
    needs: ['temperatureC'],
    gives: ['fraction'],
    answer: ({ temperatureC }, { source }) =>
      [...tables.CONTINUOUS_SHARES, ...tables.CARTRIDGE_AMBIENT].find(
        (row) => row.temperatureC === temperatureC && source.includes(row.source),
      ),
  },
  {
    needs: ['currentA'],
    gives: ['fuseA'],
    answer: (inputs, { about }) => {
      const against = /short/.test(about) ? 'short circuit' : 'overload';
      const rule = tables.LOAD_SHARES.find((row) => row.against === against);
      return rule === undefined ? undefined : { fuseA: rule.share * num(inputs, 'currentA') };
    },
  },
  {
    needs: ['currentA', 'continuousFraction', 'ratings'],
    may: ['temperatureC'],
    gives: ['fuseA'],
    answer: sized,
  },
  {
    needs: ['temperatureC'],
    gives: ['fractionOfOpenTest'],
    answer: ({ temperatureC }) =>
      temperatureC === tables.WARM_BOX.temperatureC
        ? { fractionOfOpenTest: tables.WARM_BOX.openInBox / tables.WARM_BOX.openAt25C }
        : undefined,
  },
  {
    needs: ['where'],
    gives: ['maxM'],
    answer: ({ where }) => tables.FUSE_PLACE_183_455.find((row) => row.where === where),
  },
  {
    needs: ['dropMv', 'ratingA', 'size'],
    gives: ['currentMa', 'resistanceMOhm'],
    answer: (inputs) => {
      const row = tables.FUSE_RESISTANCES.find(
        (each) => each.ratingA === inputs['ratingA'] && each.size === inputs['size'],
      );
      if (row === undefined) return undefined;
      const { resistanceMOhm } = row;
      return { resistanceMOhm, currentMa: fuseCurrentMa({ dropMv: num(inputs, 'dropMv'), resistanceMOhm }) };
    },
  },
  {
    needs: ['i2tA2S', 'currentA'],
    gives: ['timeS'],
    answer: (inputs) => ({ timeS: i2tTimeS({ i2tA2S: num(inputs, 'i2tA2S'), currentA: num(inputs, 'currentA') }) }),
  },
  {
    needs: ['partI2tA2S'],
    gives: ['maxFuseI2tA2S'],
    answer: (inputs) => ({ maxFuseI2tA2S: tables.LET_THROUGH.share * num(inputs, 'partI2tA2S') }),
  },
];
