import { formula } from '../formula/index.js';

/** Flow that a drain across a slope takes from the ground. */
export const interceptedFlow = formula({
  title: 'Flow to a cut-off drain across a slope (Darcy)',
  symbol: 'Q',
  unit: 'm³/s',
  expression: 'K*i*D*L',
  parameters: {
    K: { meaning: 'hydraulic conductivity', unit: 'm/s', min: 1e-12, max: 1e-2 },
    i: { meaning: 'fall of the water table', unit: 'm/m', min: 0, max: 0.5 },
    D: { meaning: 'wet thickness cut', unit: 'm', min: 0, max: 10 },
    L: { meaning: 'length of the drain', unit: 'm', min: 0, max: 200 },
  },
  compute: (K: number, i: number, D: number, L: number) => K * i * D * L,
  validity: 'drain down to tighter ground; downhill of it the water stands near drain level',
  source: 'Darcy 1856; form of the USBR Drainage Manual, from memory',
});
