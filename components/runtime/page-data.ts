import type { Circuit } from '../../calc/index.ts';
import type { PageContext, ShopDefaults } from '../context.ts';
import type { UnitChoice } from '../units.ts';

/** What a page hands to its browser code, as JSON in `<script type="application/json" id="page-data">`. */
export interface PageData {
  circuit: Circuit | null;
  shop: ShopDefaults;
  /** The workshop's units; a reader's choice goes over them. */
  units: UnitChoice;
  guide: { id: string; number: string; issue: number; title: string } | null;
  base: string;
}

/** The part of a page's context that the browser needs, and no more: every byte of it is on every page. */
export function pageData(page: PageContext): PageData {
  const { systemV, stockedFusesA, stockedWiresMm2, dropFraction, continuousFraction, slackFraction, standingDays } =
    page.shop;
  return {
    circuit: page.circuit,
    shop: { systemV, stockedFusesA, stockedWiresMm2, dropFraction, continuousFraction, slackFraction, standingDays },
    units: page.shop.units,
    guide:
      page.guide === null
        ? null
        : { id: page.guide.id, number: page.guide.number, issue: page.guide.issue, title: page.guide.title },
    base: page.base,
  };
}

/** The same as text that is safe inside a script element. */
export const pageDataText = (page: PageContext): string => JSON.stringify(pageData(page)).replaceAll('<', '\\u003c');
