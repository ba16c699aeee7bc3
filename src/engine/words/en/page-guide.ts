/** English words of the guide: how a dress is made from measuring to sewing. */
export const pageGuide = {
  'page.guide': 'Guide',
  'page.guide.title': 'From the tape to the last stitch',
  'page.guide.about':
    'One dress, from the measures of {child} to the finished seams. {child} is invented; every picture is drawn for her just now by the same rules as your own dresses.',
  'page.guide.back': 'Back to where you were',
  'page.guide.caution': 'Caution',
  'page.guide.picture.draws': 'The picture is being drawn.',

  'page.guide.measure': 'Measure',
  'page.guide.measure.1':
    'Measure over what she wears under the dress, with the tape flat and not pulled. Tie a soft tape round her waist and leave it there: lengths are taken to it.',
  'page.guide.measure.2':
    'Height, chest, waist, shoulder and back length fit most of a bodice. What you leave out is filled in from averages, and the page says where.',
  'page.guide.measure.3':
    'Measure twice and write down the day. Small children grow; a measuring that is two months old is worth taking again.',
  'page.guide.measure.picture': 'Front and back of the plain bodice, with the places of four measures',
  'page.guide.measure.caution':
    'Take the tape off again: nothing tied stays round a child’s neck or waist after measuring.',

  'page.guide.block': 'Draft the block',
  'page.guide.block.1':
    'The block is the plain shape: half a front and half a back that close at shoulder and side, with a little ease to breathe and move.',
  'page.guide.block.2':
    'Every line is drawn from a measure. Open the view Drafting on the table and go through the steps one at a time, as you would draw them on paper.',
  'page.guide.block.3':
    'If you have a block of your own that fits, choose “from my own paper” and enter its lengths instead.',
  'page.guide.block.picture': 'The front of the block with all its construction lines',

  'page.guide.drop-shoulder': 'Drop the shoulder',
  'page.guide.drop-shoulder.1':
    'The shoulder runs on past its tip over the arm, and a new edge goes down from there to the underarm. There is no sleeve to set in.',
  'page.guide.drop-shoulder.2':
    'Front and back must end in the same length over the arm. The page adjusts the back to the front, and the checks tell you if a change of yours parts them.',
  'page.guide.drop-shoulder.picture': 'The dropped shoulder drawn on the front of the block',

  'page.guide.yoke': 'Cut the yoke',
  'page.guide.yoke.1':
    'The yoke line parts the bodice. Above it can be another cloth, such as net; below it the dress goes on as before.',
  'page.guide.yoke.2':
    'Both new edges get an allowance and a notch, so that they go together in one way only. The lining stays whole.',
  'page.guide.yoke.picture': 'The yoke line on the front with the dropped shoulder',
  'page.guide.yoke.caution':
    'Light net burns fast. Keep it away from candles and open fire, line it where it lies on skin, and follow the rules where you sell.',

  'page.guide.lay': 'Lay the pieces on the cloth',
  'page.guide.lay.1':
    'Wash or steam the cloth first if it shrinks. Lay every arrow along the selvedge; pieces with nap or a print all point one way.',
  'page.guide.lay.2':
    'Pieces with a bracket lie with that edge on a fold, or are cut open as one. Pin all of them before you cut the first.',
  'page.guide.lay.picture': 'The satin pieces laid on the width of the cloth',

  'page.guide.print': 'Print at true size',
  'page.guide.print.1':
    'Print one page first, at 100 per cent and never “fit to page”, and measure its square. Tell the page what you measured: it corrects the next print.',
  'page.guide.print.2':
    'Trim and join the sheets by the marks at their edges, row by row. Check one long line with the tape before you cut.',
  'page.guide.print.picture': 'A skirt piece over the sheets of paper on which it is printed',

  'page.guide.sew': 'Sew',
  'page.guide.sew.1':
    'Yoke to bodice first, in front and back; then the shoulders. Match the notches, press each seam before the next one crosses it.',
  'page.guide.sew.2':
    'Sew the lining in the same order. Join dress and lining at the neck and over the arms, clip the curves, turn, then close the sides in one go through both.',
  'page.guide.sew.3':
    'Gather or pleat the skirt to the length of the waist, sew it on, set the closing, and hem last, with the child standing in the dress if you can.',
  'page.guide.sew.picture': 'The finished dress, front and back',
  'page.guide.sew.caution':
    'No cords or ties at the neck for small children, and no long loose ends anywhere. Sew small parts through with a locked thread, pull each hard, and go over the dress with a magnet for pins and needles before you hand it over. This is the usual caution, not legal advice; follow the rules where you sell.',
} as const;
