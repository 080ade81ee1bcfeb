/** @module By what a job keeps the stages of one joint: the operation that tightens it, the fastener, the place. */

export const jointKey = (of: {
  readonly operation: string;
  readonly fastener: string;
  readonly place: string;
}): string => `${of.operation} ${of.fastener} ${of.place}`;
