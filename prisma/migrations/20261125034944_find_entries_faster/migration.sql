-- Names of structures are matched in memory; nothing looks for them by threes of letters any more.
DROP INDEX "structure_name_search_key_trigram";

-- CreateIndex
CREATE INDEX "audit_entry_table_name_id_idx" ON "audit_entry"("table_name", "id");
