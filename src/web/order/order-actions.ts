/** @module What can be asked about orders: placed, received, certified, sent back, taken as it is. */
import type { Request, RequestOf } from '../../job/command.ts';
import { placeOrder, type SupplierList } from '../../job/order/order-list.ts';
import type { Action } from '../shell/action.ts';

type Asked<Kind extends Request['kind']> = Omit<RequestOf<Kind>, 'kind'>;

export const placeIt: Action<{
  readonly list: SupplierList;
  readonly order: string;
  readonly due: string;
  readonly note: string;
}> = {
  name: 'place-order',
  label: 'The order is placed',
  enabled: (job) => job.agreed !== undefined && job.handedOver === undefined,
  request: ({ list, ...told }) => placeOrder(list, told),
};

export const receiveIt: Action<Asked<'receive delivery'>> = {
  name: 'receive-delivery',
  label: 'Take the delivery in',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'receive delivery', ...asked }),
};

export const noteCertificate: Action<Asked<'note certificate'>> = {
  name: 'note-certificate',
  label: 'Note the certificate',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'note certificate', ...asked }),
};

export const sendBack: Action<Asked<'send back'>> = {
  name: 'send-back',
  label: 'Send it back',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'send back', ...asked }),
};

export const acceptLine: Action<Asked<'accept line'>> = {
  name: 'accept-line',
  label: 'Take it as it is',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'accept line', ...asked }),
};
