/** @module The rule that an offer's terms make sense for what is done, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

const sleeve = "    quantity: [{ from: 3, price: '159.00' }]\n    set-up: { name: block-on-the-mill";

describeRule('gives terms that make sense for what is done', [
  {
    breaks: 'prices by quantity of a set',
    changes: [["price: '168.00'\n    per: place", "price: '168.00'\n    per: set"]],
    says: /this is a price per set/,
    on: "quantity: [{ from: 3, price: '159.00' }]",
  },
  {
    breaks: 'two prices from one number on',
    changes: [[sleeve, sleeve.replace('}]', "}, { from: 3, price: '150.00' }]")]],
    says: /two prices are given from 3 on/,
    on: "quantity: [{ from: 3, price: '159.00' }",
  },
  {
    breaks: 'a price that rises with the quantity',
    changes: [["price: '159.00'", "price: '259.00'"]],
    says: /each costs more from 3 on than with fewer/,
    on: "price: '259.00'",
    weight: 'warning',
  },
  {
    breaks: 'a quantity that is never had',
    changes: [["from: 3, price: '159.00'", "from: 4, price: '159.00'"]],
    says: /from 4 on is never had: there are 3 places/,
    on: "from: 4, price: '159.00'",
    weight: 'warning',
  },
  {
    breaks: 'a deposit on what is new',
    changes: [
      [
        "set-up: { name: new-crankshaft, price: '1380.00' }\n    days: 12",
        "set-up: { name: new-crankshaft, price: '1380.00' }\n    deposit: '90.00'\n    days: 12",
      ],
    ],
    says: /a deposit is paid on the old part of an exchange only/,
    on: "deposit: '90.00'",
  },
  {
    breaks: 'a sleeve whose bore is no larger than the size as made',
    changes: [['bored-to: 88.00 mm', 'bored-to: 85.00 mm']],
    says: /a bore of 85 mm takes no sleeve/,
    on: 'bored-to: 85.00 mm',
  },
  {
    breaks: 'a bore for a sleeve where none is fitted',
    changes: [
      [
        'way: new-crankshaft\n  - component: big-ends',
        'way: new-crankshaft\n    bored-to: 90.00 mm\n  - component: big-ends',
      ],
    ],
    says: /only a sleeve has a bore that takes it/,
    on: 'bored-to: 90.00 mm',
  },
  {
    breaks: 'a life of nothing',
    changes: [['life: 5000 h\n  - { component: injector', 'life: 0 h\n  - { component: injector']],
    says: /the life of what is offered is not above zero/,
    on: 'life: 0 h',
  },
  {
    breaks: 'masses that cross',
    changes: [
      ["    deposit: '60.00'\n", "    deposit: '60.00'\n    mass: { least: 900 g, greatest: 800 g }\n"],
    ],
    says: /the masses cross/,
    on: 'mass: { least: 900 g',
  },
  {
    breaks: 'an exchange of what stays in its own place',
    changes: [
      [
        '    title: fuel pumps\n    at: pump\n    together: false\n    judged-by: []\n    put-back: true\n',
        '    title: fuel pumps\n    at: pump\n    together: false\n    judged-by: []\n    put-back: true\n    stays: true\n',
      ],
    ],
    says: /fuel pumps stay in their own places, and this exchange is never open/,
    on: 'does: exchange\n    size: standard\n    supplier: Sprayhope',
    weight: 'warning',
  },
]);
