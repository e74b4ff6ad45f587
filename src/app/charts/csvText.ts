export { csvText } from '../../job/csvText';
