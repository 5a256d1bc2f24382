import { defineShop } from 'tablewright';

/** The shop of whoever makes the designs here, invented: put your own figures; what is left out keeps its default. */
export default defineShop({
  machines: {
    planerWidth: '12 in',
    planerHeight: '6 in',
    jointerWidth: '8 in',
    sawDepth: '3 1/8 in',
    bandsawHeight: '12 in',
    bitLength: '2 in',
    mortiseDepth: '2 in',
  },
  clamps: {
    short: { reach: '24 in', count: 8 },
    medium: { reach: '48 in', count: 14 },
    long: { reach: '96 in', count: 2 },
    caul: '2 in',
  },
  gluing: { openTime: 10, perJoint: 2.5 },
  hands: { people: 2, perPerson: 25 },
  lumber: {
    price: { q4: 8, q5: 8.6, q6: 9.2, q8: 10, q10: 12.5, q12: 14.5, q16: 0 },
    grade: 'fas',
    basis: 'yield',
    yield: '70 %',
    addOn: '30 %',
  },
});
