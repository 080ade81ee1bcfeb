/** @module The rule that what is taken off is fitted again, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('fits again what it takes off', [
  {
    breaks: 'a part taken off and never fitted',
    changes: [['    fits: [flywheel]\n', '']],
    says: /flywheel is taken off by lift-flywheel and never fitted again/,
    on: 'removes: [flywheel]',
  },
  {
    breaks: 'a part fitted under a name that slipped',
    changes: [['fits: [rocker-gear]', 'fits: [rocker-gears]']],
    says: /rocker-gear is taken off.*write rocker-gears, if that is what is meant/,
    on: 'removes: [rocker-gear]',
  },
  {
    breaks: 'a part fitted that nothing takes off',
    changes: [
      ['removes: [crankshaft, main, thrust, rear-seal-housing]', 'removes: [crankshaft, main, thrust]'],
    ],
    says: /rear-seal-housing is fitted by close-rear-seal, and nothing takes it off/,
    on: 'fits: [rear-seal-housing]',
    weight: 'warning',
  },
  {
    breaks: 'a part that may be fitted before it came off',
    changes: [['after: [close-rear-seal]\n    fits: [flywheel]', 'fits: [flywheel]']],
    says: /fit-flywheel may be done before lift-flywheel, which takes flywheel off/,
    on: 'fits: [flywheel]',
  },
  {
    breaks: 'a part taken off twice',
    changes: [['removes: [manifold]', 'removes: [manifold, pump]']],
    says: /pump is taken off by strip-manifolds and again by lift-pumps/,
    on: 'removes: [pump]',
    weight: 'warning',
  },
]);
