package bodice

import (
	"github.com/paulmach/orb"

	"ellwand/draft/construct"
	"ellwand/draft/subject"
	"ellwand/pieces"
	"ellwand/pieces/marks"
	"ellwand/pieces/role"
	"ellwand/pieces/seams"
)

// yoke cuts a back in two along a level line so far below the back neck point:
// the back below and the yoke above it, in one on the fold and cut twice, so
// that one lines the other [source.CommonPractice].
func (f figures) yoke(s *construct.Sheet, o Options, b backUpper,
	whole pieces.Piece) (lower, yoke pieces.Piece, err error) {
	level := b.nape.Y() - o.Yoke
	least, most := b.nape.Y()-b.tip.Y()+15, b.nape.Y()-f.underarm-60
	if o.Yoke < least || o.Yoke < 30 || o.Yoke > most {
		return lower, yoke, construct.About(subject.Yoke).Refuse("bodice: a yoke of %s below the back neck point does "+
			"not lie between shoulder and underarm; ask for %s to %s",
			"Oberteil: eine Passe von %s unter dem Halswirbel liegt nicht zwischen Schulter und "+
				"Achsel; verlangen Sie %s bis %s", construct.Length(o.Yoke),
			construct.AtLeast(max(least, 30)), construct.AtMost(most))
	}
	armhole, _ := whole.Edge(seams.Armhole)
	below := construct.Reach(armhole.Path, 1, level)
	length := armhole.Path.Length()
	centre, end := orb.Point{0, level}, armhole.Path.At(below)

	lower, yoke = whole, whole
	lower.Edges, yoke.Edges = nil, []pieces.Edge{construct.Edge(seams.YokeSeam, construct.Line(centre, end))}
	for _, e := range whole.Edges {
		switch e.Name {
		case seams.Armhole:
			lower.Edges = append(lower.Edges, construct.Edge(e.Name, construct.Stretch(e.Path, 0, below)),
				construct.Edge(seams.YokeSeam, construct.Line(end, centre)))
			yoke.Edges = append(yoke.Edges, construct.Edge(e.Name, construct.Stretch(e.Path, below, length)))
		case seams.Shoulder, seams.Neck:
			yoke.Edges = append(yoke.Edges, e)
		case seams.CentreBack:
			lower.Edges = append(lower.Edges, construct.Edge(e.Name, construct.Line(centre, e.Path.End())))
			yoke.Edges = append(yoke.Edges, construct.Edge(e.Name, construct.Line(e.Path.Start(), centre)))
		default:
			lower.Edges = append(lower.Edges, e)
		}
	}
	yoke.Name, yoke.Role = role.Yoke.String(), role.Yoke
	yoke.Cut, yoke.Pair, yoke.Fold, yoke.Darts, yoke.Marks = 2, false, seams.CentreBack, nil, nil
	lower.Notches, yoke.Notches = shared(whole.Notches, below)
	half := end[0] / 2
	lower.Notches = append(lower.Notches, pieces.Notch{Edge: seams.YokeSeam, At: end[0] - half, Count: 1,
		Match: marks.Yoke})
	yoke.Notches = append(yoke.Notches, pieces.Notch{Edge: seams.YokeSeam, At: half, Count: 1, Match: marks.Yoke})
	yoke.Grain = pieces.Grain{From: orb.Point{half, level + float64(0.15*o.Yoke)},
		To: orb.Point{half, level + float64(0.8*o.Yoke)}}
	lower.Grain = upright(f.acrossBack/4, level)
	s.Draw("square across, {} below "+construct.Numbers(b.nape)+", to the armhole, and cut: the yoke above, the back "+
		"below", "the depth of the yoke", o.Yoke)
	return lower, yoke, nil
}

// shared gives the notches of an armhole that is cut at a distance from the
// underarm to the piece that they lie on.
func shared(notches []pieces.Notch, at float64) (lower, upper []pieces.Notch) {
	for _, n := range notches {
		if n.At <= at {
			lower = append(lower, n)
			continue
		}
		n.At -= at
		upper = append(upper, n)
	}
	return lower, upper
}
