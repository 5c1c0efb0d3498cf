package nest

import (
	"fmt"
	"math"
	"slices"

	"ellwand/nest/internal/model"
	"ellwand/nest/internal/search"
)

// Large sets are divided into parts of like content, which are laid each by itself.
const (
	// largeLeast is the number of pieces from which a set is large.
	largeLeast = 160
	// partLeast and partMost are between what parts have pieces, where they can.
	partLeast = 60
	partMost  = 200
	// unlikePart is the number of pieces of a part where they differ, about a garment:
	// most of the time goes into tables, and those of pairs in one part are few.
	unlikePart = 16
)

// part of a large set: pieces of the model, in its order.
type part struct{ pieces []int }

// laidPart is a layout of a part.
type laidPart struct {
	part
	spots  []search.Spot // of its pieces
	length float64
}

// partsOf divides the pieces: as many parts as leave the least to be searched, since
// parts of the same content are searched once. Nil when the set is not large, or when
// it is bound to places.
func partsOf(m *model.Model) []part {
	if len(m.Pieces) < largeLeast || m.Length > 0 || len(m.Fixed) > 0 {
		return nil
	}
	for _, piece := range m.Pieces {
		if piece.PeriodX > 0 {
			return nil
		}
	}
	places := placesOf(m)
	var best []part
	least := math.MaxInt
	for count := max(2, len(m.Pieces)/partMost); count <= max(2, len(m.Pieces)/partLeast); count++ {
		parts := divided(places, count)
		if cost := toSearch(m, parts); cost < least {
			best, least = parts, cost
		}
	}
	if least > 2*partMost {
		return divided(places, len(m.Pieces)/unlikePart)
	}
	return best
}

// placesOf the pieces in the set, from 0 to 1: copies of an item lie evenly from its own
// place on, pieces of a group all at that of its first.
func placesOf(m *model.Model) []float64 {
	total := 0.0
	copies, members := map[int]int{}, map[int]int{}
	for i, piece := range m.Pieces {
		total += m.HullArea(i)
		copies[piece.Item]++
		members[piece.Group]++
	}
	places := make([]float64, len(m.Pieces))
	first, nth, groups := map[int]float64{}, map[int]int{}, map[int]float64{}
	before := 0.0
	for i, piece := range m.Pieces {
		if _, met := first[piece.Item]; !met {
			first[piece.Item] = before / total
		}
		places[i] = (float64(nth[piece.Item]) + first[piece.Item]) / float64(copies[piece.Item])
		nth[piece.Item]++
		if piece.Group != 0 && members[piece.Group] <= partMost {
			if _, met := groups[piece.Group]; !met {
				groups[piece.Group] = places[i]
			}
			places[i] = groups[piece.Group]
		}
		before += m.HullArea(i)
	}
	return places
}

// divided into so many parts by place; parts without pieces are left out.
func divided(places []float64, count int) []part {
	parts := make([]part, count)
	for i, place := range places {
		at := min(count-1, int(float64(place*float64(count))+1e-9))
		parts[at].pieces = append(parts[at].pieces, i)
	}
	return slices.DeleteFunc(parts, func(p part) bool { return len(p.pieces) == 0 })
}

// toSearch is the number of pieces of all parts that differ.
func toSearch(m *model.Model, parts []part) int {
	met, sum := map[string]bool{}, 0
	for _, p := range parts {
		if content := p.content(m); !met[content] {
			met[content] = true
			sum += len(p.pieces)
		}
	}
	return sum
}

// content is the same for parts of the same items.
func (p part) content(m *model.Model) string {
	items := make([]int, len(p.pieces))
	for k, i := range p.pieces {
		items[k] = m.Pieces[i].Item
	}
	return fmt.Sprint(items)
}

// model of the part alone. Where a group is spread over several parts, each part takes
// its first direction: laid the other way round, any layout points the other way.
func (p part) model(m *model.Model, spread map[int]bool) *model.Model {
	only := m.Only(p.pieces)
	for k := range only.Pieces {
		piece := &only.Pieces[k]
		if !spread[piece.Group] {
			continue
		}
		direction := m.Shapes[piece.Shapes[0]].Direction
		for _, shape := range piece.Shapes {
			direction = min(direction, m.Shapes[shape].Direction)
		}
		piece.Shapes = slices.DeleteFunc(slices.Clone(piece.Shapes), func(shape int) bool {
			return m.Shapes[shape].Direction != direction
		})
	}
	return only
}

// spreadGroups are those of which pieces stand in several parts.
func spreadGroups(m *model.Model, parts []part) map[int]bool {
	home, spread := map[int]int{}, map[int]bool{}
	for k, p := range parts {
		for _, i := range p.pieces {
			group := m.Pieces[i].Group
			if at, met := home[group]; met && at != k && group != 0 {
				spread[group] = true
			}
			home[group] = k
		}
	}
	return spread
}
