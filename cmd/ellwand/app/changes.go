package app

import (
	"reflect"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/remnant"
)

// Limits of what may be given up so that a remnant is enough.
type Limits struct {
	remnant.Limits
	// Shorten is the most that a garment is shortened by, mm.
	Shorten float64
}

// UsualLimits in the units of a job [source.CommonPractice]: a seam allowance of 1 cm
// or 3/8 in, 10 cm or 4 in off the length; 2 cm or 3/4 in is the least of a hem
// that is turned twice.
func UsualLimits(work *job.Work) Limits {
	if work.InInches() {
		return Limits{Limits: remnant.Limits{SeamAllowance: 25.4 * 3 / 8, Hem: 25.4 * 3 / 4, Step: 25.4 / 4},
			Shorten: 25.4 * 4}
	}
	return Limits{Limits: remnant.Limits{SeamAllowance: 10, Hem: 20, Step: 5}, Shorten: 100}
}

// mostShortens is the share of its length that a garment is shortened by at
// most: more would be another garment.
const mostShortens = 0.15

// changes that may make a remnant enough, in the order of least harm.
func changes(file *job.File, work *job.Work, q remnant.Question, limits Limits) []remnant.Change {
	return remnant.Changes(q, limits.Limits, shortenings(file, work, limits), smallerSizes(file))
}

// shortenings draft each part of a garment shorter.
func shortenings(file *job.File, work *job.Work, limits Limits) []remnant.Change {
	var out []remnant.Change
	for _, s := range work.Shortenings {
		given := remnant.Given{Of: remnant.Shorter, Garment: s.Garment, Part: s.Part}
		if s.Part == "whole" || s.Part == s.Garment {
			given.Part = ""
		}
		most := remnant.WholeSteps(min(limits.Shorten, mostShortens*s.Length), limits.Step)
		out = append(out, remnant.Measured(given, most, limits.Step,
			func(q remnant.Question, by float64) (remnant.Question, bool) {
				shorter, err := file.Shortened(s, by)
				return redrafted(q, shorter, err)
			}))
	}
	return out
}

// smallerSizes are the next two down.
func smallerSizes(file *job.File) []remnant.Change {
	const most = 2
	var out []remnant.Change
	for i, size := range file.SmallerSizes() {
		if i == most {
			break
		}
		out = append(out, remnant.Change{
			Gives: []remnant.Given{{Of: remnant.SmallerSize, Size: size, Former: string(file.Size)}},
			Make: func(q remnant.Question, _ float64) (remnant.Question, bool) {
				smaller, err := file.InSize(size)
				return redrafted(q, smaller, err)
			},
		})
	}
	return out
}

// redrafted puts new pieces into a question. What cannot be drafted, or leaves
// the pieces of this cloth as they are, changes nothing.
func redrafted(q remnant.Question, work *job.Work, err error) (remnant.Question, bool) {
	if err != nil {
		return q, false
	}
	before := q.Pieces
	q.Pieces = work.PiecesOf(q.Cloth.Name)
	return q, !reflect.DeepEqual(before, q.Pieces)
}
