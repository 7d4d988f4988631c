/** A demo with a price and a photo in every layer. */
import { briefDemo, surveyOf } from '../folder.js';

export const PHOTO = 'data:image/jpeg;base64,/9j/4AAQ';

export const files = briefDemo('clay-slope');
export const survey = surveyOf({
  ...files,
  'prices.csv': 'item,unit,price\nperforated pipe,m,4321.5\n',
  'pits.csv': files['pits.csv']!.replace(/\n/, ',photo\n').replace(/(?<=\n)(.+)/g, '$1,spade-of-soil.jpg'),
});
export const photos = { 'spade-of-soil.jpg': PHOTO };
