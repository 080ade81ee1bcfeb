/** @module A refusal as an answer over HTTP. */
import type { Context } from 'hono';
import type { ContentfulStatusCode } from 'hono/utils/http-status';
import type { Refusal } from '../quantity/refusal.ts';

export const refusalAnswer = (context: Context, status: ContentfulStatusCode, refusal: Refusal): Response =>
  context.json({ refusal }, status);
