package draft

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft/bodice"
	"ellwand/draft/part"
	"ellwand/draft/sleeve"
	"ellwand/draft/subject"
	"ellwand/pieces/seams"
)

// Every measurement is a subject of its own, and every subject that is one has
// its measurement.
func TestMeasurementsAreSubjects(t *testing.T) {
	seen := map[subject.Subject]bool{}
	for _, name := range Measurements() {
		s := SubjectOf(name)
		assert.True(t, s.IsMeasurement(), name)
		assert.False(t, seen[s], name)
		seen[s] = true
		back, ok := MeasurementOf(s)
		assert.True(t, ok)
		assert.Equal(t, name, back)
	}
	assert.Len(t, subject.Measurements(), len(seen))
	for _, s := range subject.Options() {
		assert.False(t, s.IsMeasurement())
		_, ok := MeasurementOf(s)
		assert.False(t, ok)
	}
}

// A fault says where in the request it arose, and what it is about.
func TestFaultsSayWhere(t *testing.T) {
	t.Parallel()
	body, err := Size("women", "12")
	require.NoError(t, err)
	request := func(change func(*Request)) Request {
		r := Request{Garment: "blouse", Body: body, Bodice: &bodice.Options{}}
		change(&r)
		return r
	}
	for name, tt := range map[string]struct {
		request  Request
		place    Entry
		subjects []subject.Subject
	}{
		"bodice": {
			request(func(r *Request) { r.Bodice.Yoke = 400 }),
			Entry{Section: BodiceSection}, []subject.Subject{subject.Yoke},
		},
		"sleeve": {
			request(func(r *Request) { r.Sleeve = &sleeve.Options{HeadHeight: 10} }),
			Entry{Section: SleeveSection}, []subject.Subject{subject.HeadHeight},
		},
		"second part": {
			request(func(r *Request) {
				r.Parts = []part.Options{{Kind: part.Collar},
					{Kind: part.FlatCollar, Overlap: 90}}
			}),
			Entry{Section: PartsSection, Index: 1}, []subject.Subject{subject.Overlap},
		},
		"lining": {
			request(func(r *Request) { r.Linings = []Lining{{Of: []string{"hood"}}} }),
			Entry{Section: LiningsSection}, []subject.Subject{subject.Of},
		},
		"allowance": {
			request(func(r *Request) { r.Allowances = map[seams.Name]float64{seams.SideSeam: 400} }),
			Entry{Section: AllowancesSection, Name: "side"}, nil,
		},
	} {
		_, err := Draft(tt.request)
		require.Error(t, err, name)
		fault := FaultOf(err)
		assert.Equal(t, tt.place, fault.Entry, name)
		assert.ElementsMatch(t, tt.subjects, fault.Subjects, name)
	}
}
