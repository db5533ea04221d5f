import { contentOf } from '../processes/components.js';
const nothing = {
    ...{ nitrogen: 0, 'oxygen-demand': 0, charge: 0, chloride: 0, carbon: 0, calcium: 0, water: 0 },
};
/** What one unit of a component of a user's own holds. */
export function ownContent({ content }, values) {
    return { ...nothing, ...content(values) };
}
/**
 * A user's own component by the type of ours. Lists by component hold ours alone: whoever looks one up there for a state
 * of a model asks the model first.
 */
export const asOurs = ({ id }) => id;
/** The processes that a user adds, by the type of ours. */
export const ownProcesses = ({ processes = [] }) => processes;
/** What one unit of any component holds, ours or a user's own. */
export function contentWith(components) {
    if (components.length === 0)
        return contentOf;
    const own = new Map(components.map((component) => [component.id, component]));
    return (component, values) => {
        const found = own.get(component);
        return found === undefined ? contentOf(component, values) : ownContent(found, values);
    };
}
//# sourceMappingURL=own.js.map