import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { keepPageOnDevice } from './device/new-version.ts';
import './look/look.css';
import './look/parts.css';
import './look/keypad.css';
import './look/room.css';
import './look/book.css';

const page = document.getElementById('page');
if (page === null) throw new Error('The page has no place to be shown in.');
createRoot(page).render(<App />);
keepPageOnDevice();
