/** @module Knapsack problems with published optima. */

interface Knapsack {
  readonly name: string;
  readonly capacity: number;
  readonly weights: readonly number[];
  readonly values: readonly number[];
  readonly best: number;
  /** The one best choice, items counted from 1. */
  readonly items: readonly number[];
}

// source: data sets KNAPSACK_01 P01 to P05 as published with their optima (J. Burkardt, Florida State University)
export const knapsacks: readonly Knapsack[] = [
  {
    name: 'P01',
    capacity: 165,
    weights: [23, 31, 29, 44, 53, 38, 63, 85, 89, 82],
    values: [92, 57, 49, 68, 60, 43, 67, 84, 87, 72],
    best: 309,
    items: [1, 2, 3, 4, 6],
  },
  {
    name: 'P02',
    capacity: 26,
    weights: [12, 7, 11, 8, 9],
    values: [24, 13, 23, 15, 16],
    best: 51,
    items: [2, 3, 4],
  },
  {
    name: 'P03',
    capacity: 190,
    weights: [56, 59, 80, 64, 75, 17],
    values: [50, 50, 64, 46, 50, 5],
    best: 150,
    items: [1, 2, 5],
  },
  {
    name: 'P04',
    capacity: 50,
    weights: [31, 10, 20, 19, 4, 3, 6],
    values: [70, 20, 39, 37, 7, 5, 10],
    best: 107,
    items: [1, 4],
  },
  {
    name: 'P05',
    capacity: 104,
    weights: [25, 35, 45, 5, 25, 3, 2, 2],
    values: [350, 400, 450, 20, 70, 8, 5, 5],
    best: 900,
    items: [1, 3, 4, 5, 7, 8],
  },
];
