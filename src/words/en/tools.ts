/** Sharing, saving and opening, the draft, and what can be taken along on paper or as a table. */
export const tools = {
  'tools.share': 'Share',
  'tools.file': 'File',
  'tools.shareHead': 'Share this set-up',
  'tools.fileHead': 'Save, open, print',
  'tools.dropHere': 'Let go to look into the file. Nothing on the bench changes yet.',

  'tools.draft.opening': 'Opening…',
  'tools.draft.empty': 'Unchanged',
  'tools.draft.saved': 'Draft saved',
  'tools.draft.not saved': 'Not saved',
  'tools.draft.storage full': 'Draft not saved: storage full',
  'tools.draft.storage blocked': 'No draft: storage blocked',
  'tools.draft.private': 'No draft: private window',
  'tools.draft.not loaded': 'No draft: page not complete',
  'tools.draftMeans.opening': 'The page looks whether this browser has kept a draft.',
  'tools.draftMeans.empty':
    'Nothing has been changed since the page was opened, so there is no draft yet. This browser can keep one.',
  'tools.draftMeans.saved':
    'This browser keeps what is on the bench, the scenes of a lecture, the trials and the readings; they are there again when you come back to this page on this computer. Nothing has left the computer.',
  'tools.draftMeans.not saved':
    'What is on the bench has not been written to this browser’s storage yet; that happens a moment after each change.',
  'tools.draftMeans.storage full':
    'This browser has no room left for the latest changes. The last draft that was saved is still there. Save a file to lose nothing.',
  'tools.draftMeans.storage blocked':
    'This browser keeps nothing for this page, so closing it loses what is on the bench. Save a file to keep it.',
  'tools.draftMeans.private':
    'This window keeps nothing, as private windows may do, so closing it loses what is on the bench. Save a file to keep it.',
  'tools.draftMeans.not loaded':
    'A part of the page did not arrive, so no draft is kept. Load the page again when the connection is back, or save a file.',
  'tools.draftHead': 'The draft in this browser',
  'tools.aside':
    'A draft was found that cannot be read: {reason} It was set aside and nothing of it is on the bench. You can save its text as a file and have somebody look at it.',
  'tools.asideWork':
    'Some work kept in this browser (lessons or drills) cannot be read. It was set aside; all that can be read is still there. You can save its text as a file and have somebody look at it.',
  'tools.asideSave': 'Save its text',
  'tools.asideDrop': 'Throw it away',
  'tools.asideReason': 'its text is damaged.',

  'tools.link': 'Link to this set-up and view',
  'tools.linkLength':
    '{length, number} characters{shortened, select, none {} other { (numbers rounded to {shortened} decimals, so that mail programs keep the link whole)}}. Whoever opens it sees what you see now; later changes need a new link.',
  'tools.copy': 'Copy',
  'tools.copied': 'Copied.',
  'tools.copySelected': 'The browser does not let the page copy. The text is selected: copy it by Ctrl+C or Cmd+C.',
  'tools.noAddress':
    'This page was opened from a file, which has no address that others can reach. Give the address of the page on the web, or save a file and hand that on.',
  'tools.publicAddress': 'Address of the page on the web',
  'tools.publicAddressWrong':
    '“{given}” is no address of a page; allowed are addresses that begin with https:// or http://.',
  'tools.afterAddress': 'What comes after the address of the page',
  'tools.saveInstead': 'Save a file instead',
  'tools.linkNoScenes':
    'The link opens the set-up on the bench. The scenes of the lecture are not in it: they go in a file, which “File” saves.',
  'tools.picture': 'Picture of the link for phones',
  'tools.pictureOf': 'QR picture of the link, {length, number} characters',
  'tools.pictureLarge': 'Show it large',
  'tools.pictureSmall': 'Show it small',
  'tools.pictureWithoutView':
    'The picture opens the set-up on the bench. What you look at is left out, since with it the link is too long for a picture.',
  'tools.noPicture':
    'No picture: the link has {length, number} characters. Up to {most, number} the squares are large enough for a phone at the back of a room. Shorter names and fewer numbers off their usual values make it shorter.',
  'tools.noPictureAddress': 'No picture: there is no public address yet.',

  'tools.embed': 'Show it inside another page',
  'tools.embedHow':
    'Choose what is left out, then copy the text into the source of your page or the HTML block of a learning system.',
  'tools.leaveOut': 'Leave out',
  'tools.leaveOutAll': 'One part at least has to stay.',
  'tools.part.header': 'head of the page',
  'tools.part.scenarios': 'ready set-ups',
  'tools.part.ladder': 'ink ladder',
  'tools.part.paper': 'paper',
  'tools.part.press': 'press',
  'tools.part.transport': 'run and pause',
  'tools.part.line picture': 'press line',
  'tools.part.section': 'section at the nip',
  'tools.part.loupe': 'loupe',
  'tools.part.telling': 'what happened',
  'tools.part.readings': 'readings',
  'tools.part.workings': 'how this is computed',
  'tools.embedText': 'Text for the other page',
  'tools.embedTitle': 'Tackstair: wet inks on an offset press',
  'tools.try': 'See it in a new tab',

  'tools.save': 'Save everything',
  'tools.saveWhat':
    'One file holds the set-up, the view, the scenes of a lecture, the trials, the readings of a press sheet, your own inks, papers and presses, and how far you are in the lessons.',
  'tools.fileName': 'Name of the file',
  'tools.usualName': 'set-up',
  'tools.saveFile': 'Save the file',
  'tools.saved': 'Handed to the browser as “{name}”.',
  'tools.open': 'Open a file',
  'tools.openHow':
    'Choose a file, or drag it onto the page. It takes the place of what is on the bench; of lessons, nothing that is done here is lost.',
  'tools.openChoose': 'File to open',
  'tools.opened': '“{name}” is open.',
  'tools.takeBack': 'Take it back',
  'tools.takenBack': 'Everything is as it was before the file was opened.',
  'tools.refused': '“{name}” was not opened. Everything is as it was.',
  'tools.partly':
    'In “{name}” {count, plural, one {one thing} other {# things}} could not be read. Nothing has changed yet.',
  'tools.openRest': 'Open what could be read',
  'tools.leave': 'Leave everything as it is',
  'tools.problemAt': '{path, select, none {} other {{path}: }}{message}',
  'tools.moreProblems': 'and {count, number} more',

  'tools.tables': 'Tables for a spreadsheet',
  'tools.tablesHow': 'Each is a CSV file with the unit in every heading.',
  'tools.table.inks': 'Inks and units',
  'tools.table.traps': 'Mass trap',
  'tools.table.films': 'Films in every patch',
  'tools.table.strip': 'Densities and colour',
  'tools.manner': 'Numbers written as',
  'tools.manner.point': '1.5, cells parted by commas',
  'tools.manner.comma': '1,5, cells parted by semicolons',

  'tools.pictures': 'Pictures to keep',
  'tools.picturesHow':
    'Every picture of the part of the page that is open, drawn for white paper. SVG stays sharp at any size and keeps its words as words; PNG is for programs that take no SVG.',
  'tools.pictureWhich': 'Picture',
  'tools.picturesNone': 'This part of the page has no picture at the moment.',
  'tools.pictureWidth': 'Width in print, mm',
  'tools.pictureCaption': 'Caption below it',
  'tools.pictureSvg': 'Save as SVG',
  'tools.picturePng': 'Save as PNG, 300 points to the inch',
  'tools.pictureWidthWrong': '“{given}” is no width; allowed are {least, number} to {most, number} mm.',
  'tools.pictureSetUp': '{inks}; {paper} paper; {speed} m/s; {sheet}.',
  'tools.pictureInk': '{name} {tack}',
  'tools.pictureCredit': 'Computed by Tackstair, a teaching model.',
  'tools.picture.section': 'Section at the nip',
  'tools.picture.loupe': 'Loupe',
  'tools.picture.line': 'Press line',
  'tools.picture.pulls': 'Pulls at the nip',
  'tools.picture.stair': 'Stair of tacks',
  'tools.picture.strip': 'Control strip',
  'tools.pictureShows.section': 'The nip of unit {unit}, {name}, cut through: blanket, films and paper to scale.',
  'tools.pictureShows.loupe': 'One millimetre of the sheet after unit {unit}, {name}.',
  'tools.pictureShows.line':
    'The press from the side with {units, plural, one {# unit} other {# units}}; the sheet is at unit {unit}, {name}.',
  'tools.pictureShows.pulls': 'The pull that each film and the paper bear at unit {unit}, {name}, as bars.',
  'tools.pictureShows.stair':
    'The tacks of the {units, plural, one {ink} other {# inks}} as a stair, first unit at the left.',
  'tools.pictureShows.strip': 'The patches of the control strip with the letters of the inks in each.',
  'tools.pictureTooLarge': 'this browser makes no picture of that size.',
  'tools.pictureFailed': 'The picture could not be drawn: {reason}',

  'tools.report': 'Report on paper',
  'tools.reportHow': 'The set-up, what it reads and the link to it on a sheet or two.',
  'tools.print': 'Print the report',
  'tools.reportTitle': 'Set-up of a press, and what it prints',
  'tools.reportFrom': 'Computed by a teaching model, not measured on a press.',
  'tools.reportPaper': 'Paper',
  'tools.reportPress': 'Press',
  'tools.reportSheet': 'Sheet read',
  'tools.reportSheetIs':
    '{reading, select, first {the first sheet} settled {after everything has settled} other {sheet {reading}}}',
  'tools.reportInterval': 'time between units {seconds} s',
  'tools.reportLink': 'To open it again',
} as const
