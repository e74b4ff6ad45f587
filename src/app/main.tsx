import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App';
import './styles/tokens.css';
import './styles/base.css';
import './styles/ticket.css';
import './styles/shelf.css';
import './styles/stock.css';
import './styles/head.css';
import './styles/measure.css';
import './styles/parts.css';
import './styles/fields.css';
import './styles/tables.css';
import './styles/grams.css';
import './styles/mold.css';
import './styles/pour.css';
import './styles/sums.css';
import './styles/charts.css';
import './styles/opening.css';
import './styles/picture.css';
import './styles/pictureMarks.css';
import './styles/pictureKey.css';
import './styles/bench.css';
import './styles/benchClock.css';
import './styles/weigh.css';
import './styles/offline.css';
import './styles/book.css';

const root = document.getElementById('root');
if (root === null) throw new Error('main: expected an element with id root, got none');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
