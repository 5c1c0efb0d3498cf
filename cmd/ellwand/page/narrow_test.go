package page

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A cloth that is too narrow is told as a value, once for all its pieces; what cannot be laid
// in one way is told without the place in a file.
func TestTooNarrow(t *testing.T) {
	v := newVisit(t).enter()
	for width, want := range map[string]string{
		"14":  `"width_mm":140,`,
		"1.4": `"width_mm":14,`,
	} {
		status, text := v.ask("POST", "/api/question",
			`{"garment":"skirt","units":"cm","table":"women","size":"12","width":"`+width+`"}`)
		assert.Equal(t, 422, status)
		assert.Contains(t, text, `"code":"narrow","units":"cm",`+want)
	}
	v.told("GET", "/api/jobs/blouse.yaml", "")
	v.told("POST", "/api/jobs/blouse.yaml/act",
		`{"base":1,"do":[{"set":{"path":["cloths",0,"width"],"value":"20"}}]}`)
	status, text := v.ask("GET", "/api/jobs/blouse.yaml/table", "")
	assert.Equal(t, 422, status)
	assert.Contains(t, text, `"code":"narrow"`)
	v.told("POST", "/api/jobs/blouse.yaml/act",
		`{"base":2,"do":[{"set":{"path":["cloths",0,"width"],"value":"50"}}]}`)
	next := v.listen()
	v.told("POST", "/api/jobs/blouse.yaml/lay",
		`{"cloth":"shell","width":"500mm","lay":"folded along the warp","effort":"quick"}`)
	done := next("done")
	assert.Equal(t, true, done["refused"], done)
	assert.NotContains(t, done["sentence"], "blouse.yaml")
}
