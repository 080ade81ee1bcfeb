/** @module The gaskets, seals and other one-use items of an offer, named, plan by plan. */
import type { Offer } from '../job/offer.ts';
import { oneUseTitle } from '../job/order/one-use-lines.ts';
import { moneyText } from './figure-text.ts';
import { escaped, words } from './html.ts';

/** Nothing where no plan needs any. */
export const oneUseTable = ({ plans, currency }: Offer): string => {
  const names = [...new Set(plans.flatMap(({ oneUse = [] }) => oneUse.map(({ says }) => says)))];
  if (names.length === 0) return '';
  const rows = names.map((name) => {
    const cells = plans.map(({ oneUse = [] }) =>
      oneUse
        .filter(({ says }) => says === name)
        .map(({ count, cents }) => `${count}: ${moneyText(cents, currency)}`)
        .join(', '),
    );
    return `<tr><th scope="row">${words(name)}</th>${cells.map((cell) => `<td class="sum">${escaped(cell)}</td>`).join('')}</tr>\n`;
  });
  const title = oneUseTitle.replace('g', 'G');
  return `<h2>${title}</h2>
<div class="sheet" tabindex="0" role="region" aria-label="${title}"><table class="plans">
<thead><tr><th scope="col">How many, and what they cost</th>${plans.map(({ name }) => `<th scope="col">Plan ${escaped(name)}</th>`).join('')}</tr></thead>
<tbody>
${rows.join('')}</tbody>
</table></div>
`;
};
