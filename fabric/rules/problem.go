package rules

import (
	"errors"
	"math"

	"ellwand/fabric/bed"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/nest/layout"
	"ellwand/nest/portable"
)

// ProblemOf states the templates of a bed that is the whole lay as plain
// geometry. It fails, with the reason, when the lay is not possible.
func ProblemOf(c cloth.Cloth, b bed.Bed, templates []Template) (layout.Problem, error) {
	problem, _, err := ProblemAt(c, b, templates, JoinsOfTemplates(c.Repeat, templates), lay.Places{})
	return problem, err
}

// ProblemAt does the same for a bed whose match points are to keep to known
// places on the open cloth.
func ProblemAt(c cloth.Cloth, b bed.Bed, templates []Template, joins []Join,
	known lay.Places) (layout.Problem, *Matching, error) {
	problem, err := PlainProblem(c, b, templates)
	if err != nil {
		return problem, nil, err
	}
	m := Match(c, b, templates, joins, known)
	return problem, m, errors.Join(m.Apply(&problem), placeByRules(c, b, templates, &problem))
}

// PlainProblem leaves the repeat aside.
func PlainProblem(c cloth.Cloth, b bed.Bed, templates []Template) (layout.Problem, error) {
	problem := layout.Problem{Width: b.Width, Gap: c.Gap}
	problem.ClearLow, problem.ClearHigh = b.FoldClear(c)
	groups := map[string]int{}
	for _, t := range templates {
		item := layout.Item{Name: t.Piece.Name, Outline: t.Outline, Core: coreOf(t), Copies: t.Copies, Turns: t.Turns}
		if !t.OnFold && c.Tilt > 0 {
			item.Tilt = portable.Atan(c.Tilt) * 180 / math.Pi
		}
		if eitherEnd(c, b, t.Piece.Name) {
			item.Group = 1
		}
		if c.Nap == cloth.OneWayPerGarment {
			if groups[t.Piece.Garment] == 0 {
				groups[t.Piece.Garment] = len(groups) + 1
			}
			item.Group = groups[t.Piece.Garment]
		}
		problem.Items = append(problem.Items, item)
	}
	zones, err := Zones(b, c, farEnd(c, templates))
	problem.Zones = zones
	return problem, err
}
