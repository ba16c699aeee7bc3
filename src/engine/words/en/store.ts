/** What the order book says: keeping, two tabs, broken records, backups. */
export const store = {
  'store.older-tab':
    'Frockwright is open in another tab with an older version of the program. Close that tab, then reload this page. Your orders are safe.',
  'store.newer-tab':
    'A newer version of the program has been opened in another tab. Reload this page to go on. What was saved is safe.',
  'store.no-storage':
    'This browser does not let the page keep anything here. If this is a private window, open the page in an ordinary one; otherwise allow the page to store data in the settings of the browser.',
  'store.newer-data':
    'The orders on this device were written by a newer version of the program. Reload the page while you are online to get that version. Your orders are safe.',
  'store.storage-full':
    'There is no room left to keep this on the device. Nothing that was saved is lost, but your last change is not saved yet. Make a backup, then free some space (photos, downloads, deleted orders) and change something again.',
  'store.not-here': 'This order is no longer in the book. It may have been removed in another tab.',
  'store.too-large':
    'This order is larger than an order can be ({most} MB). Your last change is not saved; take out what is not needed, long texts first.',
  'store.broken-order':
    'This order can’t be read. Download it as it is to keep what is in it; the other orders are not touched.',
  'store.failed':
    'The browser could not do this: {said}. What was saved before is safe. Reload the page and try again.',
  'store.broken.not-a-record': 'What is stored is not an order.',
  'store.broken.no-version': 'The order does not say which version of the program wrote it.',
  'store.broken.version':
    'The order was written by another version of the program (form {found}; this one reads {known}).',
  'store.broken.form': 'A field of the order can’t be read: {path}.',
  'store.broken.unfetched': 'The browser can’t read this record from the device.',
  'store.backup.too-large':
    'This file is larger than any backup can be ({megabytes} MB, at most {most} MB). It was not opened.',
  'store.backup.not-zip': 'This is not a backup file, or only a part of it. Nothing was changed.',
  'store.backup.too-many-parts': 'This file has more parts than a backup can have. It was not opened.',
  'store.backup.part-too-large':
    'The part “{part}” would unpack to more than a backup can hold. It was not opened.',
  'store.backup.unpacks-too-large':
    'This file would unpack to more than a backup can hold. It was not opened.',
  'store.backup.part-name': 'This file has a part that no backup has: “{part}”. Nothing was changed.',
  'store.backup.part-twice': 'The part “{part}” stands twice in this file. Nothing was changed.',
  'store.backup.no-manifest':
    'This zip file is not a backup: it has no list of its parts. Nothing was changed.',
  'store.backup.bad-manifest':
    'The list of parts in this backup (manifest.json) is damaged. Nothing was changed.',
  'store.backup.newer-form':
    'This backup was made by a newer version of the program. Get that version first: reload the page while you are online. Nothing was changed.',
  'store.backup.part-missing': 'The part “{part}” is missing from this backup. Nothing was changed.',
  'store.backup.part-unlisted': 'The part “{part}” is not in the list of this backup. Nothing was changed.',
  'store.backup.part-damaged':
    'The part “{part}” of this backup is damaged: it is not what was written. Nothing was changed.',
  'store.backup.part-unreadable': 'The part “{part}” can’t be read.',
  'store.backup.counts': 'This backup does not hold as many orders as it says. Nothing was changed.',
  'store.backup.book-too-large':
    'The book is larger than one backup can hold. Remove deleted orders for good, then try again.',
  'store.backup.not-secure':
    'The browser checks backups only on a page that was opened over https or from this device itself. Open the page that way and try again.',
  'store.backup.changed-meanwhile':
    'An order has changed since this backup was compared with your book. Nothing was written. Open the backup again.',
} as const;
