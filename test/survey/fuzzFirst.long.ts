import { fuzzHalf } from './fuzzLong.js';

fuzzHalf(0);
