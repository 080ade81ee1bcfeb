/** @module A two-cylinder engine small enough to be overhauled whole in one test. Invented; its figures too. */

export const sparrowbill = `
format: endfloat engine type 1
id: sparrowbill-2
title: Sparrowbill 2 generator engine
version: 1
source: invented for the tests
cylinders: 2
layout: in line
stroke: 90 mm
rod: 150 mm
pin-offset: 0 mm
firing-order: [1, 2]
places:
  main: { title: main bearing, count: 2, along: bearing, drawn: main }
  pump: { title: fuel pump, count: 2, along: cylinder, drawn: pump }
characteristics:
  main-journal-diameter:
    title: main journal diameter
    at: main
    scheme: { axes: [vertical, horizontal] }
    wears: smaller
    instrument: outside micrometer
    limits: { new: { least: 49.975 mm, greatest: 49.990 mm }, wear: { least: 49.940 mm } }
  main-journal-ovality:
    title: main journal ovality
    at: main
    derived: { range-over-axes: main-journal-diameter }
    wears: larger
    limits: { new: { greatest: 0.010 mm }, wear: { greatest: 0.030 mm } }
  pump-depth:
    title: pump depth at the timing point
    at: pump
    wears: either
    instrument: depth gauge
components:
  mains:
    title: main journals
    at: main
    together: true
    judged-by: [main-journal-diameter, main-journal-ovality]
    put-back: true
    life: 8000 h
    sizes:
      of: main-journal-diameter
      clean-up: 0.05 mm
      steps:
        - name: '0.25'
          limits: { new: { least: 49.725 mm, greatest: 49.740 mm }, wear: { least: 49.690 mm } }
  main-shells:
    title: main bearing shells
    at: main
    together: true
    judged-by: []
    put-back: true
    life: 8000 h
  pumps:
    title: fuel pumps
    at: pump
    together: false
    judged-by: []
    put-back: true
    life: 6000 h
offers:
  - { component: mains, does: machine, size: '0.25', supplier: Ashlar Grinding, price: '180.00', per: set, days: 4 }
  - component: main-shells
    does: replace
    size: standard
    supplier: Ashlar Parts
    price: '40.00'
    per: set
    set-up: { name: carriage, price: '6.00' }
    days: 1
  - { component: pumps, does: replace, size: standard, supplier: Ashlar Fuel, price: '95.00', per: place, days: 2 }
couplings:
  - { kind: renew with, if: mains, is: [machine], renew: main-shells }
operations:
  lift-crankshaft: { title: Lift the crankshaft, phase: strip, at: main, cautions: [Sling it at two journals.] }
  lay-crankshaft:
    title: Lay the crankshaft
    phase: build
    at: main
    after: [lift-crankshaft]
    needs: [main-journal-diameter, main-journal-ovality]
  fit-pumps:
    title: Fit the pumps
    phase: set
    at: pump
    after: [lay-crankshaft]
    needs: [pump-depth]
  first-start: { title: First start, phase: run, after: [fit-pumps] }
pump-timing:
  at: pump
  datum: 60.00 mm
  depth: pump-depth
  shims-sit: under the pump flange
  adding-shims: retards
  rate: 2 deg/mm
  tolerance: 0.05 mm
  most-shims: 3
  range: { least: 0.20 mm, greatest: 1.20 mm }
  shims: [0.10 mm, 0.20 mm, 0.30 mm, 0.50 mm]
`;
