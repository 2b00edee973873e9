-- A dissection or preparation in front of visitors is an activity of its own: courts judged it by what the donors had
-- declared, and sampling while a show is open says nothing of it.
ALTER TABLE loan
  DROP CONSTRAINT loan_activities_set,
  ADD CONSTRAINT loan_activities_set
    CHECK (activities <@ ARRAY['sampling', 'casting and scanning', 'dissection before visitors']);
