/**
 * The one answer that everything shown is drawn from: {@link understorey.brief.Brief Brief}, assembled by
 * {@link understorey.brief.Planner Planner} in the order in which a plan flows: season, sky, light, kit,
 * outing, exposure, packing, scene.
 */
package understorey.brief;
