package page

import (
	"fmt"
	"math"
	"slices"

	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/desk"
	"ellwand/cmd/ellwand/strict"
	"ellwand/fabric/remnant"
)

// offeredChange is a change that makes it enough, with what does it where the page can.
type offeredChange struct {
	Label string    `json:"label"`
	Gives []givenUp `json:"gives"`
	// Cloth that pieces are cut from then, in place of this one; Width of it where the job
	// has none of that name yet.
	Cloth string        `json:"cloth,omitempty"`
	Width string        `json:"width,omitempty"`
	Do    []desk.Action `json:"do,omitempty"`
}

// givenUp is one thing that a change gives up; lengths as people write them in the job.
type givenUp struct {
	Of      string   `json:"of"`
	Pieces  []string `json:"pieces,omitempty"`
	Least   string   `json:"least,omitempty"`
	By      string   `json:"by,omitempty"`
	Garment string   `json:"garment,omitempty"`
	Part    string   `json:"part,omitempty"`
	Size    string   `json:"size,omitempty"`
	Former  string   `json:"former,omitempty"`
}

func givenUpOf(gives []remnant.Given, say func(mm float64) string) []givenUp {
	out := []givenUp{}
	for _, g := range gives {
		out = append(out, givenUp{sacrifices[g.Of], g.Pieces, say(g.Least), say(g.By), g.Garment, g.Part, g.Size, g.Former})
	}
	return out
}

// sacrifices by the words that the page has for each.
var sacrifices = map[remnant.Sacrifice]string{
	remnant.CloseLaying: "close", remnant.StraightEnds: "straight", remnant.LaidOpen: "open",
	remnant.LowerAllowances: "allowances", remnant.NarrowerHems: "hems", remnant.Shorter: "shorter",
	remnant.OnCrossGrain: "cross", remnant.CutInTwo: "two", remnant.SeamForFold: "seam", remnant.OtherCloth: "cloth",
	remnant.NapPerGarment: "nap each", remnant.NapIgnored: "nap", remnant.SmallerSize: "size",
}

// actionsFor what is given up, where single values of the job do it all and the job can be
// drafted with them; otherwise none.
func (r remedy) actionsFor(gives []remnant.Given) []desk.Action {
	for _, given := range gives {
		if !r.give(given) {
			return nil
		}
	}
	if r.tried(r.do) == nil {
		return nil
	}
	return r.do
}

// give one thing up; false where no single value does it.
func (r *remedy) give(given remnant.Given) bool {
	switch given.Of {
	case remnant.CloseLaying:
		return r.set("none", r.here().Key("hand_laying"))
	case remnant.StraightEnds:
		return r.set("0", r.here().Key("straighten"))
	case remnant.NapPerGarment:
		return r.set("one way per garment", r.here().Key("nap"))
	case remnant.NapIgnored:
		return r.set("either way", r.here().Key("nap"))
	case remnant.SmallerSize:
		return r.set(given.Size, strict.Top("size"))
	case remnant.LowerAllowances:
		return r.allow(false, func(now float64) float64 { return math.Min(now, given.Least) })
	case remnant.NarrowerHems:
		return r.allow(true, func(now float64) float64 { return math.Min(now, math.Max(given.Least, now-given.By)) })
	case remnant.Shorter:
		return r.shorten(given)
	case remnant.OnCrossGrain:
		return r.each(given, r.onCross, liesAcross)
	case remnant.CutInTwo:
		return r.each(given, r.joined, isHalved)
	case remnant.SeamForFold:
		return r.each(given, r.seamed, isSeamed)
	case remnant.OtherCloth:
		return r.each(given, r.fromOther, isElsewhere)
	case remnant.LaidOpen:
		return true // nothing is to be changed in the job
	}
	return false
}

// allow less at the hems, or at all other edges, of the pieces of the cloth.
func (r *remedy) allow(hems bool, less func(now float64) float64) bool {
	done := map[string]bool{}
	name := r.work.Cloths[r.cloth].Cloth.Name
	for _, piece := range r.pieces {
		for _, edge := range piece.Edges {
			now := less(edge.AllowanceMM)
			if piece.Cloth != name || edge.Fold || edge.Hem != hems || now >= edge.AllowanceMM {
				continue
			}
			if edge.Path == nil {
				return false
			}
			if key := fmt.Sprint(edge.Path); !done[key] {
				done[key] = r.set(r.work.Format(now), desk.PathOf(edge.Path))
			}
		}
	}
	return true
}

func (r *remedy) shorten(given remnant.Given) bool {
	at := slices.IndexFunc(r.work.Shortenings, func(s job.Shortening) bool {
		return s.Garment == given.Garment && (s.Part == given.Part ||
			given.Part == "" && (s.Part == "whole" || s.Part == s.Garment))
	})
	if at < 0 || r.work.Shortenings[at].At == nil {
		return false
	}
	one := r.work.Shortenings[at]
	return r.set(r.work.Format(one.Length-given.By), one.At)
}
