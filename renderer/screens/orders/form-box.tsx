export { FormBox } from '../../parts/form-box.tsx';
