using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Techniques;

/// <summary>A turn that lays every patch of a form onto another patch, role by role.</summary>
/// <param name="Turn">One to three quarter turns.</param>
/// <param name="RoleAt">For each role the role on whose place it comes to lie.</param>
public sealed record Symmetry(Turn Turn, ImmutableArray<int> RoleAt)
{
    internal static ImmutableArray<Symmetry> AllOf(UnitForm form)
    {
        // Shapes that lie on the patches look another way from every side.
        if (!form.Overlays.IsEmpty)
        {
            return [];
        }
        var roleOf = new Dictionary<Polygon, int>();
        foreach (RolePatch patch in form.Patches)
        {
            roleOf[FromFirstCorner(patch.Shape)] = patch.Role;
        }
        var found = ImmutableArray.CreateBuilder<Symmetry>();
        int step = form.Width == form.Height ? 1 : 2;
        for (int quarters = step; quarters < 4; quarters += step)
        {
            var turn = new Turn(quarters);
            int[] roleAt = new int[form.RoleCount];
            Array.Fill(roleAt, -1);
            if (form.Patches.All(p => Lands(p, turn, roleAt)))
            {
                found.Add(new Symmetry(turn, [.. roleAt]));
            }
        }
        return found.ToImmutable();

        bool Lands(RolePatch patch, Turn turn, int[] roleAt)
        {
            Polygon turned = patch.Shape.Turned(turn, form.Width, form.Height);
            if (!roleOf.TryGetValue(FromFirstCorner(turned), out int role))
            {
                return false;
            }
            if (roleAt[patch.Role] >= 0 && roleAt[patch.Role] != role)
            {
                return false;
            }
            roleAt[patch.Role] = role;
            return true;
        }
    }

    // The same polygon whatever corner it is listed from.
    private static Polygon FromFirstCorner(Polygon polygon)
    {
        ImmutableArray<Point> corners = polygon.Corners;
        int first = 0;
        for (int i = 1; i < corners.Length; i++)
        {
            int order = corners[i].Y.CompareTo(corners[first].Y);
            if (order < 0 || (order == 0 && corners[i].X < corners[first].X))
            {
                first = i;
            }
        }
        return polygon.FromCorner(first);
    }
}
