/** @module The rule that parts used but once are renewed, broken by the least change. */
import { describe, expect, it } from 'vitest';
import { describeRule } from '../../../test/engines/breach.ts';
import { quillfeatherText } from '../../../test/engines/demo-engines.ts';
import { readEngineType } from '../read-engine-type.ts';

describeRule('renews every part used but once', [
  {
    breaks: 'a part spoilt and never renewed',
    changes: [['    renews: [sump-gasket]\n', '']],
    says: /sump-gasket is spoilt by drop-sump, and no operation renews it/,
    on: 'disturbed-by: [drop-sump]',
  },
  {
    breaks: 'a part renewed under a name that slipped',
    changes: [['renews: [rear-seal]', 'renews: [rear-seals]']],
    says: /there is no part used but once rear-seals: write rear-seal, if that is what is meant/,
    on: 'renews: [rear-seals]',
  },
  {
    breaks: 'a part that is to be new with another and never is',
    changes: [['big-end-stretch-bolts, gudgeon-circlips]', 'big-end-stretch-bolts]']],
    says: /gudgeon-circlips is to be new with pistons, and no operation renews it/,
    on: 'renewed-with: [pistons]',
  },
  {
    breaks: 'a part that may be renewed before it is spoilt',
    changes: [
      ['after: [close-rear-seal]\n    fits: [flywheel]', 'fits: [flywheel]\n    renews: [manifold-gaskets]'],
      ['    renews: [manifold-gaskets]\n    stand: upright', '    stand: upright'],
    ],
    says: /fit-flywheel may renew manifold-gaskets before strip-manifolds, which spoils it/,
    on: 'renews: [manifold-gaskets]',
  },
  {
    breaks: 'a part renewed while all is taken apart',
    changes: [['removes: [flywheel]\n', 'removes: [flywheel]\n    renews: [rear-seal]\n']],
    says: /lift-flywheel takes apart, and is said to renew rear-seal/,
    on: 'renews: [rear-seal]\n    tools: [lifting-beam',
  },
]);

describe('an engine type that says nothing of renewing', () => {
  it('can be used, and is told so once', () => {
    const { engine, troubles } = readEngineType(quillfeatherText.replaceAll(/ {4}renews: .*\n/g, ''));
    expect(engine).toBeDefined();
    expect(troubles.map(({ weight, what }) => `${weight}: ${what}`)).toEqual([
      'warning: no operation says which parts used but once go in new with it',
    ]);
  });
});
