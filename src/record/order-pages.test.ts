/** @module Orders and the machine shop's instruction on paper, and what the record says of them. */
import { describe, expect, it } from 'vitest';
import { groundBack, noCrack, orderFrom, readJournals, toOrder } from '../../test/job/ordering.ts';
import { machineShopSheetsOf } from '../job/order/machine-shop.ts';
import { orderListOf } from '../job/order/order-list.ts';
import { machineShopPage } from './machine-shop-page.ts';
import { orderPage } from './order-page.ts';
import { pageOf, recordOf } from './record.ts';
import { verifyRecord } from './verify.ts';

const text = (html: string): string =>
  html
    .replace(/<style>.*<\/style>/s, '')
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&nbsp;', ' ')
    .replaceAll('&#39;', "'")
    .replace(/\s+/g, ' ');

describe('an order on paper', () => {
  it('is a sheet for each supplier, with places, counts, prices and their sum', () => {
    const bench = toOrder();
    const page = text(orderPage(bench.open, orderListOf(bench.open)));
    expect(page.match(/Order, not placed yet/g)).toHaveLength(3);
    expect(page).toContain('1 main journals: machine to 0.25 main bearing 1, main bearing 2 1 180.00');
    expect(page).toContain('with a certificate of a crack test by magnetic particles after machining');
    // source: shells 40.00, four lock tabs 3.00, carriage 6.00, added by hand
    expect(page).toMatch(/carriage once 6\.00 in all 49\.00/);
  });

  it('says number and day once it is placed', () => {
    const bench = toOrder();
    bench.done(orderFrom(bench, 'Ashlar Grinding', 'O-1'));
    const page = text(orderPage(bench.open, [...bench.open.orders.values()]));
    expect(page).toContain('Order O-1');
    expect(page).toContain('Here by 2026-03-12');
  });

  it('keeps what is typed from being taken for markup', () => {
    const bench = toOrder();
    bench.done({ ...orderFrom(bench, 'Ashlar Grinding', '<b>'), note: '<script>' });
    const page = orderPage(bench.open, [...bench.open.orders.values()]);
    expect(page).not.toContain('<script>');
    expect(page).toContain('&lt;b&gt;');
  });
});

describe("the machine shop's instruction on paper", () => {
  it('says each place from measured to finished in both units, and the terms', () => {
    const { open } = toOrder();
    const page = text(machineShopPage(open, machineShopSheetsOf(open)));
    expect(page).toMatch(
      /main bearing 1 49\.920 ± 0\.00\d 49\.930 ± 0\.00\d 49\.725 to 49\.740 1\.9577 to 1\.9582 0\.180 to 0\.205 mm/,
    );
    expect(page).toContain('Finish Ra 0.4 µm at most');
    expect(page).toContain('Fillet 2.0 mm to 2.4 mm (0.0788 in to 0.0944 in)');
    expect(page).toContain('Mark the undersize on the front web');
    expect(page).toContain('Crack test before by magnetic particles');
    expect(page).toContain('Order not placed yet');
  });
});

describe('the record', () => {
  it('says what was ordered, what came, how it measured, and stays one that can be verified', () => {
    const bench = groundBack();
    readJournals(bench, ['49.732', '49.733', '49.712', '49.713']);
    bench.done(noCrack);
    const section = (name: string) =>
      recordOf(bench.open, bench.events).sections.find((one) => one.name === name);
    const [row] = section('orders')?.table?.rows ?? [];
    expect(row?.marked).toBe(true);
    expect(row?.cells[5]).toMatch(
      /^1 came \(.*\); certificate AG 3318, crack test by magnetic particles: no crack/,
    );
    expect(row?.cells[6]).toContain('not as ordered: main journal diameter at main bearing 2 is 49.712 mm');
    const readings = section('readings')?.table?.rows ?? [];
    expect(readings.filter(({ cells }) => cells.at(-1)?.startsWith('of the part before'))).toHaveLength(4);
    const deviations = section('deviations')?.table?.rows.map(({ cells }) => cells[0]);
    expect(deviations).toContain('main journals: machine to 0.25, order O-1');
    expect(verifyRecord(pageOf(bench.open, bench.events)).kind).toBe('verified');
  });

  it('says nothing of orders where none was placed', () => {
    const { open, events } = toOrder();
    expect(recordOf(open, events).sections.map(({ name }) => name)).not.toContain('orders');
  });
});
