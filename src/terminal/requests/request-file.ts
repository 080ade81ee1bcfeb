/** @module A file of requests for one job, as the server takes them too: a JSON list, or one JSON object a line. */
import type { Request } from '../../job/command.ts';
import { readRequest } from '../../job/read-command.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';

const parsed = (text: string, where: string): Answer<unknown> => {
  try {
    return answer(JSON.parse(text));
  } catch {
    return refuse('this is not JSON', where, 'write a list of requests, or one request a line');
  }
};

const items = (text: string): Answer<readonly unknown[]> => {
  if (text.trimStart().startsWith('[')) {
    const list = parsed(text, 'file');
    if (list.kind === 'refused') return list;
    return Array.isArray(list.value)
      ? answer(list.value)
      : refuse('this is not a list', 'file', 'write a list of requests');
  }
  const read: unknown[] = [];
  for (const [at, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue;
    const item = parsed(line, `line ${at + 1}`);
    if (item.kind === 'refused') return item;
    read.push(item.value);
  }
  return answer(read);
};

export const readRequests = (text: string): Answer<readonly Request[]> => {
  const list = items(text);
  if (list.kind === 'refused') return list;
  const requests: Request[] = [];
  for (const [at, item] of list.value.entries()) {
    const request = readRequest(item);
    if (request.kind === 'refused')
      return refuse(
        request.refusal.what,
        `request ${at + 1}, ${request.refusal.where}`,
        request.refusal.remedy,
      );
    requests.push(request.value);
  }
  return answer(requests);
};
