/** @module `endfloat workshop`: what the workshop says of itself on its offers, shown and changed. */
import { answer } from '../../quantity/refusal.ts';
import { timeText } from '../../record/figure-text.ts';
import { readRegisterRequest } from '../../register/read.ts';
import { registerNow } from '../../store/register-now.ts';
import { askRegister } from '../ask-register.ts';
import { answerNo, type Outcome, type TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { keysText, readValues } from '../requests/read-values.ts';
import { describedBy, workshopKeys, workshopRows } from '../requests/workshop-keys.ts';
import { table } from '../table.ts';
import { inWorkshop, signingOptions } from '../workshop.ts';

export const workshop: TerminalCommand = {
  name: 'workshop',
  summary: 'show or change what stands on the workshop’s offers: name, taxes, labour, terms',
  usage: ['workshop', 'workshop key=value…'],
  about: `Keys: ${keysText(workshopKeys)}\nWhat is not given stays as it is; taxes=none takes them all out. Offers made before keep what they were made with.`,
  options: signingOptions,
  words: [0, 16],
  run: async (given) => {
    const values = readValues(given.words, workshopKeys, 'endfloat workshop');
    if (values.kind === 'refused') return values;
    const changes = given.words.length > 0;
    return inWorkshop<Outcome>(given, changes, async (store) => {
      let register = await registerNow(store);
      if (changes) {
        const { workshop: before } = register;
        const request = readRegisterRequest({
          kind: 'describe workshop',
          workshop: describedBy(values.value, before),
        });
        if (request.kind === 'refused') return request;
        const asked = await askRegister(given, store, register, request.value);
        if (asked.kind === 'refused') return asked;
        if (asked.value.kind === 'no') return answerNo(asked.value.refusal);
        register = asked.value.register;
      }
      const { workshop: says } = register;
      return answer({
        text:
          says === undefined
            ? 'Nothing is said of the workshop yet: endfloat workshop --help shows how.'
            : `${table([{ head: 'Key' }, { head: 'Says' }], workshopRows(says))}Written by ${plain(says.by)}, ${timeText(says.at)}.`,
        json: { workshop: says ?? null },
      });
    });
  },
};
