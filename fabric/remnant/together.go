package remnant

import (
	"errors"
	"fmt"
	"math"

	"github.com/paulmach/orb"
	"github.com/peterstace/simplefeatures/geom"

	"ellwand/fabric/cloth"
	"ellwand/fabric/internal/motion"
	"ellwand/fabric/lay"
	"ellwand/fabric/plan"
	"ellwand/pieces"
	"ellwand/pieces/geometry"
	"ellwand/pieces/language"
)

// Names of what is not cloth in a row of offcuts.
const (
	betweenRemnants = "between two remnants"
	offTheRemnant   = "off the remnant"
)

// barWidth between two offcuts on the common frame, mm [source.OwnChoice].
const barWidth = 50

// Together makes one remnant of several offcuts of a cloth, or of one that is
// not a rectangle. They lie in a row on a common frame, their lowest edges on
// y = 0; what is not cloth becomes flaws of it, so that every rule of a
// rectangular cloth with flaws holds. Offcuts of unlike widths, or not
// rectangular, must be laid open. What the cloth loses when it is wetted, and
// the straightening of the ends and the hand laying of each rectangle, are taken
// off here, and are 0 in the remnant that is returned.
//
// Errors: no offcut, one of no size, or an outline that crosses itself.
func Together(c cloth.Cloth, offcuts []Offcut) (Remnant, error) {
	if len(offcuts) == 0 {
		return Remnant{}, fmt.Errorf("%s: there is no remnant; give the length and width of each", c)
	}
	row := row{cloth: c}
	row.cloth.Width = 0 // that of the widest, not as the shop sells it
	for i, offcut := range offcuts {
		if err := row.measure(offcut, i); err != nil {
			return Remnant{}, err
		}
	}
	var places []lay.OffcutPlace
	for i, outline := range row.outlines {
		row.add(outline, offcuts[i].Flaws, i > 0)
		box := outline.Bound()
		places = append(places,
			lay.OffcutPlace{Name: offcuts[i].named(i), From: row.length - (box.Max[0] - box.Min[0]), To: row.length})
	}
	if row.err != nil {
		return Remnant{}, row.err
	}
	row.cloth.Straighten, row.cloth.HandLaying = 0, cloth.Addition{}
	if !row.cloth.Shrinkage.CutFirst {
		row.cloth.Shrinkage = cloth.Shrinkage{}
	}
	return Remnant{Cloth: row.cloth, Length: row.length, Offcuts: places}, nil
}

// MustLieOpen reports whether offcuts of unlike widths, or not rectangular, are
// among them: no one fold halves them all.
func MustLieOpen(offcuts []Offcut) bool {
	for _, o := range offcuts {
		if len(o.Outline) > 0 || math.Abs(o.Width-offcuts[0].Width) > plan.SameLength {
			return true
		}
	}
	return false
}

// named gives an offcut without a name its number.
func (o Offcut) named(i int) string {
	if o.Name == "" {
		return fmt.Sprintf("remnant %d", i+1)
	}
	return o.Name
}

// row is the common frame as it is filled.
type row struct {
	cloth    cloth.Cloth
	outlines []orb.Ring
	length   float64
	err      error
}

// wetted brings a ring to what is left of it.
func (r *row) wetted(ring orb.Ring) orb.Ring {
	s := r.cloth.Shrinkage
	if s.CutFirst {
		return geometry.Closed(ring)
	}
	return geometry.Closed(orb.Ring(motion.Mapped(pieces.Motion{A: 1 - s.Warp, D: 1 - s.Weft}, ring)))
}

// measure notes the outline of an offcut, and the width of the widest.
func (r *row) measure(offcut Offcut, i int) error {
	name := offcut.named(i)
	outline := offcut.Outline
	if len(outline) == 0 {
		if !cloth.IsLength(offcut.Length) || !cloth.IsLength(offcut.Width) || offcut.Length*offcut.Width == 0 {
			return fmt.Errorf("%s: %s is %s by %s; give its length and its width from edge to edge", r.cloth, name,
				r.cloth.Say(offcut.Length), r.cloth.Say(offcut.Width))
		}
		outline = geometry.Rectangle(0, 0, r.cloth.HandLaying.Within(offcut.Length-r.cloth.Straighten), offcut.Width)
	}
	if err := (cloth.Flaw{Outline: outline}).Check(); err != nil {
		return language.Refuse("%s: the outline of %s encloses nothing or crosses itself; give its corners in turn",
			"%s: der Umriss von %s umschließt nichts oder kreuzt sich; geben Sie seine Ecken der Reihe nach an", r.cloth, name)
	}
	outline = r.wetted(outline)
	r.outlines = append(r.outlines, outline)
	r.cloth.Width = max(r.cloth.Width, outline.Bound().Max[1])
	return nil
}

// add puts an offcut at the end of the row: its flaws, and what it leaves of
// the width, become flaws of the whole.
func (r *row) add(outline orb.Ring, flaws []cloth.Flaw, behind bool) {
	if behind {
		bar := cloth.BarFlaw(betweenRemnants, r.length, r.length+barWidth)
		bar.OffCloth = true
		r.cloth.Flaws = append(r.cloth.Flaws, bar)
		r.length += barWidth
	}
	box := outline.Bound()
	move := pieces.Motion{A: 1, D: 1, E: r.length - box.Min[0]}
	selvedge := r.cloth.Selvedge
	// The row has the selvedges of the widest; a narrower one keeps its own.
	inner := geometry.Rectangle(box.Min[0]-1, box.Min[1]+selvedge, box.Max[0]+1, box.Max[1]-selvedge)
	usable, err := geom.Intersection(motion.Polygon(outline), motion.Polygon(inner))
	if err == nil {
		frame := motion.Polygon(geometry.Rectangle(box.Min[0], selvedge, box.Max[0], r.cloth.Width-selvedge))
		usable, err = geom.Difference(frame, usable)
	}
	if err != nil {
		r.err = errors.Join(r.err, fmt.Errorf("%s: the outline of a remnant cannot be used; check that it does not "+
			"cross itself", r.cloth))
		return
	}
	for _, ring := range motion.OuterRings(usable) {
		r.cloth.Flaws = append(r.cloth.Flaws,
			cloth.Flaw{Name: offTheRemnant, OffCloth: true, Outline: orb.Ring(motion.Mapped(move, ring))})
	}
	for _, flaw := range flaws {
		flaw.Outline = orb.Ring(motion.Mapped(move, r.wetted(flaw.Outline)))
		r.cloth.Flaws = append(r.cloth.Flaws, flaw)
	}
	r.length += box.Max[0] - box.Min[0]
}
